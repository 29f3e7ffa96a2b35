import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import { Plane } from 'three';
import { moveOf, offsetOf } from '../../core/scene/offset-of.ts';
import type { SceneContact, SeatScene, Solid, Step } from '../../core/scene/types.ts';
import { ContactMark } from './ContactMark.tsx';
import { CutFaces } from './CutFaces.tsx';
import { arrowLines, blockLines, dimensionLines } from './glyph-lines.ts';
import type { SeatPictureProps } from './SeatPicture.tsx';
import { showsDimensions } from './seat-labels.ts';
import { SolidPart } from './SolidPart.tsx';
import { StaticLines } from './StaticLines.tsx';

const WHOLE: readonly Plane[] = [];

/** All that is drawn of a scene: solids, cut faces, faces that touch, dimensions, the cabinet's left. */
export function SceneParts({ scene, step, share, apart, cutAt, zones, palette }: SeatPictureProps) {
  const clip = useClip(scene, cutAt);
  const shown =
    step === null
      ? scene.solids
      : [...scene.solids, ...scene.tools].filter(({ group }) => step.shown.includes(group));
  const offset = (solid: Solid) => offsetOf(solid, step, share, apart);
  const { arrow, edge } = scene.cabinetLeft;
  const arrowOf = useMemo(() => arrowLines(arrow.line, 14), [arrow]);
  const leftEdge = useMemo(() => [edge], [edge]);
  const zoneLines = useMemo(() => scene.keepOuts.flatMap(blockLines), [scene]);
  const sizes = useMemo(() => scene.dimensions.flatMap(dimensionLines), [scene]);
  const tools = useMemo(() => (step?.tools ?? []).flatMap(({ line }) => arrowLines(line, 12)), [step]);
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
      {touching(scene, step, share).flatMap((contact) =>
        sidesOf(scene, contact, apart).map((solid) => (
          <ContactMark
            key={`${contact.id} ${solid.id}`}
            contact={contact}
            offset={offset(solid)}
            palette={palette}
            clip={clip}
          />
        )),
      )}
      {showsDimensions(step) ? <StaticLines lines={sizes} color={palette.dimension} width={2} over /> : null}
      <StaticLines lines={arrowOf} color={palette.left} width={4} />
      <group position={tuple(moveOf('front', step, share))}>
        <StaticLines lines={leftEdge} color={palette.left} width={6} />
      </group>
      {zones ? <StaticLines lines={zoneLines} color={palette.zone} width={1.5} over /> : null}
      {tools.length > 0 ? <StaticLines lines={tools} color={palette.left} width={4} over /> : null}
    </>
  );
}

const tuple = ({ x, y, z }: { x: number; y: number; z: number }): [number, number, number] => [x, y, z];

/** The faces that touch by now: those of a step are there when it has come to its end. */
const touching = (scene: SeatScene, step: Step | null, share: number): readonly SceneContact[] =>
  step === null
    ? scene.contacts
    : share < 1
      ? []
      : scene.contacts.filter(({ on }) => step.touching.includes(on));

/** Drawn apart, a contact is marked on both things that touch. */
function sidesOf(scene: SeatScene, contact: SceneContact, apart: number): readonly Solid[] {
  const ids = apart > 0 ? [contact.solid, TOUCHED[contact.on]] : [contact.solid];
  return scene.solids.filter(({ id }) => ids.includes(id));
}

/** The solid on which a contact is marked when the scene is drawn apart. */
const TOUCHED: Readonly<Record<SceneContact['on'], string>> = {
  'front edge': 'front',
  'front back': 'front',
  box: 'box-front',
  'box side inside': 'box-front',
  'box bottom': 'box-bottom',
  'box front inside': 'box-front',
  'box top edge': 'box-front',
};

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
