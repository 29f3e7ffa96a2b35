import type { Point } from '../geometry/types.ts';
import type { Vec3 } from '../jigs/types.ts';
import { add, scale } from './vec.ts';

/** A line in the plane of a picture, mm. */
export type FlatLine = readonly [Point, Point];

/** A length, mm, that changes evenly over the plane of a picture: `x * point.x + y * point.y + at`. */
export interface Slope {
  readonly x: number;
  readonly y: number;
  readonly at: number;
}

export const heightAt = ({ x, y, at }: Slope, point: Point): number => x * point.x + y * point.y + at;

/** The ring where a slope is above 0. Of a ring that bends inwards, parts may hang together by a seam of no width. */
export const keepRing = (ring: readonly Point[], slope: Slope): readonly Point[] =>
  kept(ring, (point) => heightAt(slope, point), between);

/** The ring in space where a height, mm, that changes evenly is above 0. */
export const keepRingInSpace = (ring: readonly Vec3[], height: (point: Vec3) => number): readonly Vec3[] =>
  kept(ring, height, (a, b, share) => add(scale(a, 1 - share), scale(b, share)));

/** Sutherland and Hodgman's clipping against one plane (1974, from memory). */
function kept<P>(
  ring: readonly P[],
  height: (point: P) => number,
  middle: (a: P, b: P, share: number) => P,
): readonly P[] {
  const heights = ring.map(height);
  return ring.flatMap((point, index): readonly P[] => {
    const [from, to] = [heights.at(index - 1) ?? 0, heights[index] ?? 0];
    const own = to > 0 ? [point] : [];
    return from > 0 === to > 0
      ? own
      : [middle(ring.at(index - 1) ?? point, point, from / (from - to)), ...own];
  });
}

/** The part of a line where a slope is above 0: one, or none. */
export function keepLine([from, to]: FlatLine, slope: Slope): readonly FlatLine[] {
  const [a, b] = [heightAt(slope, from), heightAt(slope, to)];
  if (a <= 0 && b <= 0) return [];
  if (a > 0 && b > 0) return [[from, to]];
  const middle = between(from, to, a / (a - b));
  return [a > 0 ? [from, middle] : [middle, to]];
}

const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + share * (b.x - a.x),
  y: a.y + share * (b.y - a.y),
});
