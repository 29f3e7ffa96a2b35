import { useEffect, useMemo } from 'react';
import { DoubleSide, type Plane } from 'three';
import type { Vec3 } from '../../core/jigs/types.ts';
import type { Solid } from '../../core/scene/types.ts';
import { edgeLines, solidMesh } from './geometry.ts';
import { Lines } from './Lines.tsx';
import type { Palette } from './palette.ts';

interface SolidPartProps {
  readonly solid: Solid;
  /** From its seat, mm. */
  readonly offset: Vec3;
  readonly palette: Palette;
  readonly clip: readonly Plane[];
}

/** The one place where a solid of the scene becomes faces and lines to draw, and where they are given back. */
function useSolid(solid: Solid) {
  const made = useMemo(() => {
    const faces = solidMesh(solid);
    return { faces, edges: edgeLines(faces, solid.lines) };
  }, [solid]);
  useEffect(
    () => () => {
      made.faces.dispose();
      made.edges.dispose();
    },
    [made],
  );
  return made;
}

/** A solid with its edges, so that its shape reads without colour. A ghost has its edges only. */
export function SolidPart({ solid, offset, palette, clip }: SolidPartProps) {
  const { faces, edges } = useSolid(solid);
  return (
    <group position={[offset.x, offset.y, offset.z]}>
      {solid.ghost ? null : (
        <mesh geometry={faces}>
          <meshLambertMaterial
            color={palette.fill[solid.material]}
            side={DoubleSide}
            clippingPlanes={[...clip]}
            polygonOffset
            polygonOffsetFactor={1}
            polygonOffsetUnits={1}
          />
        </mesh>
      )}
      <Lines
        geometry={edges}
        color={solid.ghost ? palette.faint : palette.line}
        width={solid.ghost ? 1 : 1.5}
        clip={clip}
      />
    </group>
  );
}
