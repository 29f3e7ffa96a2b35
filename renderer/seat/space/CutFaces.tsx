import { useCallback, useMemo } from 'react';
import type { Vec3 } from '../../../core/jigs/types.ts';
import { cutSolid, type CutFace } from '../../../core/scene/cut-solid.ts';
import { ringLines } from '../../../core/scene/line-faces.ts';
import type { Section, Solid } from '../../../core/scene/types.ts';
import { faceMesh, linesGeometry } from './geometry.ts';
import { Hatched } from './Hatched.tsx';
import { Lines } from './Lines.tsx';
import { lineLook } from '../line-looks.ts';
import { CUT_HATCH, type Palette } from '../palette.ts';
import { useDisposed } from './useDisposed.ts';

interface CutFacesProps {
  readonly solid: Solid;
  readonly offset: Vec3;
  readonly axis: Section['axis'];
  /** mm along the axis. */
  readonly at: number;
  readonly palette: Palette;
}

/** The faces where a solid is cut, hatched by what it is. */
export function CutFaces({ solid, offset, axis, at, palette }: CutFacesProps) {
  const faces = useMemo(() => cutSolid(solid, axis, at - offset[axis]), [solid, axis, at, offset]);
  return (
    <group position={[offset.x, offset.y, offset.z]}>
      {faces.map((face, index) => (
        // The faces of one cut have no other name than their place.
        // oxlint-disable-next-line react/no-array-index-key
        <OneFace key={index} face={face} solid={solid} palette={palette} />
      ))}
    </group>
  );
}

function OneFace({ face, solid, palette }: { face: CutFace; solid: Solid; palette: Palette }) {
  const mesh = useDisposed(
    face,
    useCallback((of: CutFace) => faceMesh(of.outline, of.holes), []),
  );
  const edge = useDisposed(
    face,
    useCallback((of: CutFace) => linesGeometry([of.outline, ...of.holes].flatMap(ringLines)), []),
  );
  return (
    <>
      <Hatched
        geometry={mesh}
        ink={palette.line}
        ground={palette.fill[solid.material]}
        hatch={CUT_HATCH[solid.material]}
      />
      <Lines geometry={edge} {...lineLook('cut', palette)} />
    </>
  );
}
