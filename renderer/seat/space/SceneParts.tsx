import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import { Plane } from 'three';
import { arrowLines, blockLines, dimensionLines, HEAD } from '../../../core/scene/glyph-lines.ts';
import { moveOf } from '../../../core/scene/offset-of.ts';
import { showsDimensions, shownContacts, shownOffset, shownSolids } from '../../../core/scene/shown-seat.ts';
import type { SeatScene, Solid } from '../../../core/scene/types.ts';
import { lineLook } from '../line-looks.ts';
import { ContactMark } from './ContactMark.tsx';
import { CutFaces } from './CutFaces.tsx';
import type { PictureProps } from './SpaceSeat.tsx';
import { SolidPart } from './SolidPart.tsx';
import { StaticLines } from './StaticLines.tsx';

const WHOLE: readonly Plane[] = [];

/** All that is drawn of a scene: solids, cut faces, faces that touch, dimensions, the cabinet's left. */
export function SceneParts({ scene, showing, palette }: PictureProps) {
  const { step, share, cutAt, zones } = showing;
  const clip = useClip(scene, cutAt);
  const shown = shownSolids(scene, showing);
  const offset = (solid: Solid) => shownOffset(solid, showing);
  const { arrow, edge } = scene.cabinetLeft;
  const arrowOf = useMemo(() => arrowLines(arrow.line, HEAD.left), [arrow]);
  const leftEdge = useMemo(() => [edge], [edge]);
  const zoneLines = useMemo(() => scene.keepOuts.flatMap(blockLines), [scene]);
  const sizes = useMemo(() => scene.dimensions.flatMap(dimensionLines), [scene]);
  const tools = useMemo(() => (step?.tools ?? []).flatMap(({ line }) => arrowLines(line, HEAD.tool)), [step]);
  return (
    <>
      {shown.map((solid) => (
        <SolidPart key={solid.id} solid={solid} offset={offset(solid)} palette={palette} clip={clip} />
      ))}
      {cutAt === null
        ? null
        : shown.map((solid) => (
            <CutFaces
              key={solid.id}
              solid={solid}
              offset={offset(solid)}
              axis={scene.section.axis}
              at={cutAt}
              palette={palette}
            />
          ))}
      {shownContacts(scene, showing).map(({ contact, solid }) => (
        <ContactMark
          key={`${contact.id} ${solid.id}`}
          contact={contact}
          offset={offset(solid)}
          palette={palette}
          clip={clip}
        />
      ))}
      {showsDimensions(showing) ? (
        <StaticLines lines={sizes} {...lineLook('dimension', palette)} over />
      ) : null}
      <StaticLines lines={arrowOf} {...lineLook('arrow', palette)} />
      <group position={tuple(moveOf('front', step, share))}>
        <StaticLines lines={leftEdge} {...lineLook('left edge', palette)} />
      </group>
      {zones ? <StaticLines lines={zoneLines} {...lineLook('zone', palette)} over /> : null}
      {tools.length > 0 ? <StaticLines lines={tools} {...lineLook('tool', palette)} over /> : null}
    </>
  );
}

const tuple = ({ x, y, z }: { x: number; y: number; z: number }): [number, number, number] => [x, y, z];

/** The plane that takes away what lies before the cut. */
function useClip({ section }: SeatScene, cutAt: number | null): readonly Plane[] {
  const invalidate = useThree((state) => state.invalidate);
  const planes = useMemo(() => [new Plane()], []);
  const { axis, side } = section;
  useLayoutEffect(() => {
    const [plane] = planes;
    plane?.normal.set(axis === 'x' ? -side : 0, axis === 'y' ? -side : 0, 0);
    if (plane !== undefined) plane.constant = (cutAt ?? 0) * side;
    invalidate();
  }, [planes, axis, side, cutAt, invalidate]);
  return cutAt === null ? WHOLE : planes;
}
