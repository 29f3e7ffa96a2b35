import { useEffect, useMemo } from 'react';
import type { InstancedBufferGeometry, Plane } from 'three';
import { lineMaterial } from './line-material.ts';

interface LinesProps {
  /** From `linesGeometry`. */
  readonly geometry: InstancedBufferGeometry;
  readonly color: string;
  /** Pixels. */
  readonly width: number;
  /** Drawn over everything that stands before it. */
  readonly over?: boolean;
  /** Strokes of so many mm, as hidden edges are drawn; 0 draws the line whole. */
  readonly dash?: number;
  readonly clip?: readonly Plane[];
}

const WHOLE: readonly Plane[] = [];

/** Lines of a width in pixels. */
export function Lines({ geometry, color, width, over = false, dash = 0, clip = WHOLE }: LinesProps) {
  const material = useMemo(
    () => lineMaterial({ color, width, over, dash }, clip),
    [color, width, over, dash, clip],
  );
  useEffect(() => () => material.dispose(), [material]);
  return (
    <mesh
      geometry={geometry}
      material={material}
      renderOrder={over ? 20 : 1}
      // Its corners are where they belong only once the program has run.
      frustumCulled={false}
    />
  );
}
