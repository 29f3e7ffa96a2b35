import type { Vec3 } from '../jigs/types.ts';

/** Vector arithmetic in space, mm. */
export const AXES = ['x', 'y', 'z'] as const;

export const add = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
export const scale = (a: Vec3, by: number): Vec3 => ({ x: a.x * by, y: a.y * by, z: a.z * by });
export const dot = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const ORIGIN: Vec3 = { x: 0, y: 0, z: 0 };
export const UP: Vec3 = { x: 0, y: 0, z: 1 };

/** An upright block of space. */
export interface Block {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The least upright block round points. */
export function blockOf(points: readonly Vec3[]): Block {
  if (points.length === 0) throw new RangeError('blockOf: no points');
  const pick = (of: (...values: number[]) => number): Vec3 => ({
    x: of(...points.map(({ x }) => x)),
    y: of(...points.map(({ y }) => y)),
    z: of(...points.map(({ z }) => z)),
  });
  return { min: pick(Math.min), max: pick(Math.max) };
}

export const centerOf = ({ min, max }: Block): Vec3 => scale(add(min, max), 0.5);
