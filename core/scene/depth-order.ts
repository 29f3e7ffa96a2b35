import type { Bounds } from '../geometry/measure.ts';
import type { Point } from '../geometry/types.ts';
import { heightAt, type Slope } from './keep-part.ts';

/** What is drawn flat: a face with its holes, or a line. Lengths in mm, in the plane of the picture. */
export interface Flat {
  /** Outline and holes of a face, even-odd; of a line its two ends. */
  readonly rings: readonly (readonly Point[])[];
  readonly bounds: Bounds;
  /** Towards the viewer. */
  readonly nearness: Slope;
  /** The convex body that it is a face of, none of whose faces hides another; null where it is of none. */
  readonly body: string | null;
}

/** mm. What is no nearer than this touches; a line that touches a face is drawn on it. */
const TOUCH = 0.02;

/** A flat thing in an order. */
export interface Placed<T> {
  readonly flat: T;
  /** Index in the order of the first after it that stands over it; the order's length where none does. */
  readonly until: number;
}

/** The part of a flat thing where a slope is above 0. */
type KeepPart<T extends Flat> = (flat: T, slope: Slope) => T;

/**
 * The order in which to draw flat things one over another, the farthest first, so that each is hidden by what stands
 * before it (the painter's algorithm; Newell, Newell and Sancha 1972, from memory). What is before another here and
 * behind it there, as where a bit runs into wood, is drawn in two parts; a line is drawn whole. Of things that hide one
 * another in a ring, as sticks that lean on one another do, some one is drawn first.
 */
export function depthOrder<T extends Flat>(flats: readonly T[], keep: KeepPart<T>): readonly Placed<T>[] {
  const parts = [...flats];
  /** For each part those before it in the list that it hides, and those that hide it. */
  const hides: (readonly number[])[] = [];
  const hidden: (readonly number[])[] = [];
  for (let index = 0; index < parts.length; index += 1) {
    const over: number[] = [];
    const under: number[] = [];
    for (let other = 0; other < index; other += 1) {
      const a = parts[index];
      const b = parts[other];
      // Most are nowhere near one another.
      if (a === undefined || b === undefined || !meet(a.bounds, b.bounds)) continue;
      const place = placeOf(a, b);
      if (place === 'over') over.push(other);
      else if (place === 'under') under.push(other);
      else if (place === 'both') {
        const lead = differenceOf(a.nearness, b.nearness);
        parts[index] = keep(a, lead);
        parts.push(keep(a, opposite(lead)));
        over.length = 0;
        under.length = 0;
        other = -1;
      }
    }
    hides.push(over);
    hidden.push(under);
  }
  return sorted(parts, hides, hidden);
}

/** Each part after those that it hides. */
function sorted<T>(
  parts: readonly T[],
  hides: readonly (readonly number[])[],
  hidden: readonly (readonly number[])[],
): readonly Placed<T>[] {
  const behind = hides.map((over) => [...over]);
  for (const [index, under] of hidden.entries()) for (const other of under) behind[other]?.push(index);
  const order: number[] = [];
  const begun = new Set<number>();
  const draw = (index: number): void => {
    if (begun.has(index)) return;
    begun.add(index);
    for (const other of behind[index] ?? []) draw(other);
    order.push(index);
  };
  for (const index of parts.keys()) draw(index);
  const placeOfPart = new Map(order.map((index, place) => [index, place]));
  const until = parts.map(() => order.length);
  for (const [place, index] of order.entries()) {
    for (const other of behind[index] ?? []) {
      // In a ring something is drawn before what it stands over.
      if ((placeOfPart.get(other) ?? place) < place) until[other] = Math.min(until[other] ?? place, place);
    }
  }
  return order.flatMap((index) =>
    parts.slice(index, index + 1).map((flat) => ({ flat, until: until[index] ?? 0 })),
  );
}

const differenceOf = (a: Slope, b: Slope): Slope => ({
  x: a.x - b.x,
  y: a.y - b.y,
  at: a.at - b.at,
});

const opposite = ({ x, y, at }: Slope): Slope => ({ x: -x, y: -y, at: -at });

/** Where a part stands as another is seen; null where neither hides the other. */
type Place = 'over' | 'under' | 'both' | null;

/**
 * Both are flat, so that one is before the other most, and least, at corners of what they have in common: a corner of
 * one of them, or where their borders cross.
 */
function placeOf(a: Flat, b: Flat): Place {
  if (a.body !== null && a.body === b.body) return null;
  const lead = differenceOf(a.nearness, b.nearness);
  const mayBeOver = greatest(lead, a.bounds, b.bounds) > TOUCH;
  const mayBeUnder = greatest(opposite(lead), a.bounds, b.bounds) > TOUCH;
  const lineA = isLine(a);
  const lineB = isLine(b);
  if (!mayBeOver && !mayBeUnder && lineA === lineB) return null;
  let isOver = false;
  let isUnder = false;
  let meets = false;
  /** Whether all is known. */
  const look = (point: Point): boolean => {
    const by = heightAt(lead, point);
    meets = true;
    if (by > TOUCH) isOver = true;
    else if (by < -TOUCH) isUnder = true;
    return (isOver || !mayBeOver) && (isUnder || !mayBeUnder);
  };
  eachCommonCorner(a, b, look);
  // A line that runs through a face is drawn whole.
  if (isOver && isUnder) return lineA ? 'over' : lineB ? 'under' : 'both';
  if (isOver || isUnder) return isOver ? 'over' : 'under';
  return !meets || lineA === lineB ? null : lineA ? 'over' : 'under';
}

const meet = (a: Bounds, b: Bounds): boolean =>
  a.min.x <= b.max.x && b.min.x <= a.max.x && a.min.y <= b.max.y && b.min.y <= a.max.y;

/** The greatest value of a slope in what two boxes have in common: it tells at once what can be. */
const greatest = (slope: Slope, a: Bounds, b: Bounds): number =>
  slope.at +
  slope.x * (slope.x > 0 ? Math.min(a.max.x, b.max.x) : Math.max(a.min.x, b.min.x)) +
  slope.y * (slope.y > 0 ? Math.min(a.max.y, b.max.y) : Math.max(a.min.y, b.min.y));

const isLine = ({ rings }: Flat): boolean => rings.length === 1 && rings[0]?.length === 2;

/** Looks at the corners of what two things have in common until a look says that it is enough. */
function eachCommonCorner(a: Flat, b: Flat, look: (point: Point) => boolean): void {
  for (const ring of a.rings) for (const point of ring) if (holds(b, point) && look(point)) return;
  for (const ring of b.rings) for (const point of ring) if (holds(a, point) && look(point)) return;
  for (const ring of a.rings) {
    let p = ring.at(-1);
    for (const q of ring) {
      if (p !== undefined && eachCrossing(p, q, b, look)) return;
      p = q;
    }
  }
}

/** Looks where a line crosses the borders of a thing until it is enough; whether it was. */
function eachCrossing(p: Point, q: Point, { rings, bounds }: Flat, look: (point: Point) => boolean): boolean {
  const minX = Math.min(p.x, q.x);
  const maxX = Math.max(p.x, q.x);
  const minY = Math.min(p.y, q.y);
  const maxY = Math.max(p.y, q.y);
  const { min, max } = bounds;
  if (minX > max.x || maxX < min.x || minY > max.y || maxY < min.y) return false;
  const dx = q.x - p.x;
  const dy = q.y - p.y;
  for (const ring of rings) {
    let r = ring.at(-1);
    for (const s of ring) {
      if (
        r !== undefined &&
        (r.x >= minX || s.x >= minX) &&
        (r.x <= maxX || s.x <= maxX) &&
        (r.y >= minY || s.y >= minY) &&
        (r.y <= maxY || s.y <= maxY)
      ) {
        const ex = s.x - r.x;
        const ey = s.y - r.y;
        const turn = dx * ey - dy * ex;
        const along = ((r.x - p.x) * ey - (r.y - p.y) * ex) / turn;
        const across = ((r.x - p.x) * dy - (r.y - p.y) * dx) / turn;
        // Along one another, neither is a number that passes.
        if (along >= 0 && along <= 1 && across >= 0 && across <= 1) {
          if (look({ x: p.x + along * dx, y: p.y + along * dy })) return true;
        }
      }
      r = s;
    }
  }
  return false;
}

/** Whether a point is inside a face and in none of its holes: it has an odd number of sides to one hand. */
export function holds({ rings, bounds: { min, max } }: Flat, { x, y }: Point): boolean {
  if (x < min.x || x > max.x || y < min.y || y > max.y) return false;
  let odd = false;
  for (const ring of rings) {
    let a = ring.at(-1);
    for (const b of ring) {
      if (a !== undefined && a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) {
        odd = !odd;
      }
      a = b;
    }
  }
  return odd;
}
