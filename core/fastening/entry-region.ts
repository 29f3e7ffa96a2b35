import { distance, dot } from '../geometry/vector.ts';
import type { Point } from '../geometry/types.ts';
import { meetCapsule, meetWay, nearestOnBorder, nearestOnWay, outsideCapsule } from './capsule.ts';
import type { Capsule } from './capsule.ts';
import type { Cuts } from './cuts.ts';

/** Where a screw may enter: a convex outline less capsules about holes. Corner frame, mm. */
export interface EntryRegion {
  readonly outline: readonly Point[];
  readonly capsules: readonly Capsule[];
}

/** mm. Float noise of the sums below; nothing is called allowed that fails by more. */
const NOISE = 1e-9;

/** The entries at which every limit has `level` mm over its least; null when there is none. */
export function entryRegion(cuts: Cuts, level: number): EntryRegion | null {
  const { least, most, slanted } = cuts;
  const [x0, x1, y0, y1] = [least.x + level, most.x - level, least.y + level, most.y - level];
  if (x0 > x1 + NOISE || y0 > y1 + NOISE) return null;
  let outline: readonly Point[] = [
    { x: x0, y: y0 },
    { x: Math.max(x0, x1), y: y0 },
    { x: Math.max(x0, x1), y: Math.max(y0, y1) },
    { x: x0, y: Math.max(y0, y1) },
  ];
  for (const { normal, over } of slanted) {
    outline = clip(outline, normal, over - level);
    if (outline.length === 0) return null;
  }
  const capsules = cuts.capsules
    .map(({ from, to, radius }) => ({ from, to, radius: radius + level }))
    .filter(({ radius }) => radius > 0);
  const region = { outline, capsules: capsules.filter((capsule) => reaches(capsule, outline)) };
  return region.capsules.length === 0 || corners(region).some((point) => inRegion(region, point))
    ? region
    : null;
}

/** The part of a convex outline in a half plane. */
function clip(outline: readonly Point[], normal: Point, over: number): readonly Point[] {
  const kept: Point[] = [];
  outline.forEach((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point;
    const [here, there] = [dot(normal, point) + over, dot(normal, next) + over];
    if (here >= -NOISE) kept.push(point);
    if ((here > NOISE && there < -NOISE) || (here < -NOISE && there > NOISE)) {
      const share = here / (here - there);
      kept.push({ x: point.x + share * (next.x - point.x), y: point.y + share * (next.y - point.y) });
    }
  });
  return kept;
}

/** Whether a capsule's own rectangle meets the outline's. */
function reaches({ from, to, radius }: Capsule, outline: readonly Point[]): boolean {
  const [x0, x1, y0, y1] = extent(outline);
  return (
    Math.min(from.x, to.x) - radius < x1 &&
    Math.max(from.x, to.x) + radius > x0 &&
    Math.min(from.y, to.y) - radius < y1 &&
    Math.max(from.y, to.y) + radius > y0
  );
}

/** Least and most x, least and most y. */
function extent(outline: readonly Point[]): readonly [number, number, number, number] {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of outline) {
    [x0, x1] = [Math.min(x0, x), Math.max(x1, x)];
    [y0, y1] = [Math.min(y0, y), Math.max(y1, y)];
  }
  return [x0, x1, y0, y1];
}

/** Every corner that the region's border can have: each piece of it ends in one or is the whole outline. */
function corners({ outline, capsules }: EntryRegion): readonly Point[] {
  return [
    ...outline,
    ...capsules.flatMap((capsule) => sidesOf(outline).flatMap(([a, b]) => meetWay(capsule, a, b))),
    ...capsules.flatMap((one, index) =>
      capsules.slice(index + 1).flatMap((other) => meetCapsule(one, other)),
    ),
  ];
}

const sidesOf = (outline: readonly Point[]): readonly (readonly [Point, Point])[] =>
  outline.map((point, index) => [point, outline[(index + 1) % outline.length] ?? point]);

function inRegion({ outline, capsules }: EntryRegion, point: Point): boolean {
  return inOutline(outline, point) && capsules.every((capsule) => outsideCapsule(capsule, point) >= -NOISE);
}

/** Whether a point is in a convex, counter-clockwise outline, which may have shrunk to a line or a point. */
function inOutline(outline: readonly Point[], point: Point): boolean {
  const [x0, x1, y0, y1] = extent(outline);
  if (point.x < x0 - NOISE || point.x > x1 + NOISE || point.y < y0 - NOISE || point.y > y1 + NOISE) {
    return false;
  }
  return sidesOf(outline).every(([a, b]) => {
    const length = distance(a, b);
    const area = (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
    return length <= NOISE || area / length >= -NOISE;
  });
}

/** The point of a region that is nearest to another. */
export function nearestInRegion(region: EntryRegion, point: Point): Point {
  if (inRegion(region, point)) return point;
  const { outline, capsules } = region;
  const candidates = [
    ...corners(region),
    ...sidesOf(outline).map(([a, b]) => nearestOnWay(a, b, point)),
    ...capsules.flatMap((capsule) => nearestOnBorder(capsule, point)),
  ].filter((candidate) => capsules.length === 0 || inRegion(region, candidate));
  const [first, ...rest] = candidates;
  if (first === undefined) throw new RangeError('nearestInRegion: the region has no point');
  return rest.reduce(
    (best, next) => (distance(next, point) < distance(best, point) - NOISE ? next : best),
    first,
  );
}
