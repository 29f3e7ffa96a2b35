import { SAME_LENGTH } from '../units/tolerances.ts';
import { segmentOf, turnBetween } from './segments.ts';
import type { RingContour, Vertex } from './types.ts';
import { add, distance, scale, subtract } from './vector.ts';

/**
 * The ring with one corner rounded by the arc that is tangent to both of its straight sides; radius in mm.
 *
 *     fillet(rectangle(100, 40), 2, 5)   //  ───╮
 *                                        //     │
 *
 * The corner must lie between two lines and be long enough on both sides, or it throws: callers choose radii
 * from sizes that they have checked. A side that is used up to its end leaves no zero-length segment behind.
 */
export function fillet(ring: RingContour, index: number, radius: number): RingContour {
  const { vertices } = ring;
  const count = vertices.length;
  const corner = vertices[index];
  const before = vertices[(index + count - 1) % count];
  const after = vertices[(index + 1) % count];
  if (corner === undefined || before === undefined || after === undefined || count < 3) {
    throw new RangeError(`fillet: the ring has no corner ${index}`);
  }
  if (before.bulge !== 0 || corner.bulge !== 0) {
    throw new RangeError(`fillet: corner ${index} is not between two lines`);
  }
  if (!(radius > 0)) throw new RangeError(`fillet: the radius must be above 0, got ${radius}`);
  const turn = turnBetween(segmentOf(before, corner), segmentOf(corner, after));
  const setback = radius * Math.tan(Math.abs(turn) / 2);
  const [roomBefore, roomAfter] = [distance(before, corner), distance(corner, after)];
  if (setback < SAME_LENGTH) throw new RangeError(`fillet: corner ${index} is straight`);
  if (setback > Math.min(roomBefore, roomAfter) + SAME_LENGTH) {
    throw new RangeError(
      `fillet: radius ${radius} needs ${setback} mm of each side, there are ${roomBefore} and ${roomAfter}`,
    );
  }
  const start = add(corner, scale(subtract(before, corner), setback / roomBefore));
  const end = add(corner, scale(subtract(after, corner), setback / roomAfter));
  const rounded: Vertex[] = [
    { ...start, bulge: Math.tan(turn / 4) },
    { ...end, bulge: 0 },
  ];
  const replaced = vertices.flatMap((vertex, at) => (at === index ? rounded : [vertex]));
  return { kind: 'ring', vertices: withoutRepeats(replaced) };
}

/** Drops straight segments of no length: of two vertices on one place the one with the leaving segment stays. */
const withoutRepeats = (vertices: readonly Vertex[]): readonly Vertex[] =>
  vertices.filter((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length];
    return next === undefined || distance(vertex, next) > SAME_LENGTH;
  });
