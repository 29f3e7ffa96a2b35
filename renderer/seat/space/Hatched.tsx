import { useEffect, useMemo } from 'react';
import type { BufferGeometry, Plane } from 'three';
import type { Hatch } from '../hatch.ts';
import { hatchMaterial } from './hatch-material.ts';

interface HatchedProps {
  readonly geometry: BufferGeometry;
  readonly ink: string;
  /** Colour between the strokes; null leaves them open. */
  readonly ground: string | null;
  readonly hatch: Hatch;
  readonly over?: boolean;
  readonly clip?: readonly Plane[];
}

const WHOLE: readonly Plane[] = [];

/** A face filled with strokes that stay the same size on the screen. */
export function Hatched({ geometry, ink, ground, hatch, over = false, clip = WHOLE }: HatchedProps) {
  const material = useMemo(
    () => hatchMaterial({ ink, ground, hatch, over }, clip),
    [ink, ground, hatch, over, clip],
  );
  useEffect(() => () => material.dispose(), [material]);
  return <mesh geometry={geometry} material={material} renderOrder={over ? 19 : 0} />;
}
