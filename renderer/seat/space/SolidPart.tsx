import { useEffect, useMemo } from 'react';
import type { BufferGeometry, Plane } from 'three';
import type { Vec3 } from '../../../core/jigs/types.ts';
import type { Solid } from '../../../core/scene/types.ts';
import { faceMaterial } from './face-material.ts';
import { edgeLines, solidMesh } from './geometry.ts';
import { Lines } from './Lines.tsx';
import { lineLook } from '../line-looks.ts';
import type { Palette } from '../palette.ts';

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
      {solid.ghost ? null : <Faces geometry={faces} fill={palette.fill[solid.material]} clip={clip} />}
      <Lines geometry={edges} {...lineLook(solid.ghost ? 'ghost' : 'edge', palette)} clip={clip} />
    </group>
  );
}

interface FacesProps {
  readonly geometry: BufferGeometry;
  readonly fill: string;
  readonly clip: readonly Plane[];
}

function Faces({ geometry, fill, clip }: FacesProps) {
  const material = useMemo(() => faceMaterial(fill, clip), [fill, clip]);
  useEffect(() => () => material.dispose(), [material]);
  return <mesh geometry={geometry} material={material} />;
}
