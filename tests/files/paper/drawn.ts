import type { Point } from '../../../core/geometry/types.ts';

/** Four points of a cubic curve; a straight line has its control points at its ends. */
export type Stretch = readonly [Point, Point, Point, Point];

/** A stroked line of a page as another program read it: mm from the page's lower left corner. */
export interface DrawnLine {
  readonly stretches: readonly Stretch[];
  /** mm */
  readonly width: number;
  readonly dashed: boolean;
}

export const straight = (from: Point, to: Point): Stretch => [from, from, to, to];

/** Where a stretch begins, and where the last one ends. */
export const cornersOf = ({ stretches }: DrawnLine): readonly Point[] => {
  const last = stretches.at(-1);
  return [...stretches.map(([start]) => start), ...(last === undefined ? [] : [last[3]])];
};

/** Lines of one straight stretch. */
export const singles = (lines: readonly DrawnLine[]): readonly Stretch[] =>
  lines.flatMap(({ stretches }) => (stretches.length === 1 ? stretches : []));

/** The upright rectangle that a line is, or null. */
export function rectangleOf(line: DrawnLine): { x: number; y: number; w: number; h: number } | null {
  const corners = cornersOf(line);
  if (line.stretches.length < 4 || line.stretches.length > 5) return null;
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  const [w, h] = [Math.max(...xs) - x, Math.max(...ys) - y];
  const onCorner = (value: number, from: number, size: number) =>
    Math.abs(value - from) < 1e-3 || Math.abs(value - from - size) < 1e-3;
  return corners.every((corner) => onCorner(corner.x, x, w) && onCorner(corner.y, y, h))
    ? { x, y, w, h }
    : null;
}

/** Points along a stretch. */
export const along = ([a, b, c, d]: Stretch, count: number): readonly Point[] =>
  Array.from({ length: count + 1 }, (_, index) => {
    const t = index / count;
    const of = (get: (point: Point) => number) =>
      get(a) * (1 - t) ** 3 + 3 * get(b) * t * (1 - t) ** 2 + 3 * get(c) * t ** 2 * (1 - t) + get(d) * t ** 3;
    return { x: of(({ x }) => x), y: of(({ y }) => y) };
  });
