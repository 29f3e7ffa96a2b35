import { boxesApart } from './box-pairs.ts';
import { windingOf } from './contains.ts';
import { boundsOfPoints, boundsOfSegment } from './measure.ts';
import { clockwise, counterClockwise } from './orient.ts';
import type { Loop } from './region.ts';
import { pointAt } from './segments.ts';
import type { ClosedContour, Point } from './types.ts';

/** Whether a place belongs to the result, by how often the first and the second area's loops run around it. */
export type Membership = (a: number, b: number) => boolean;

export interface Sorted {
  /** Loops that meet others or hold others, for the clipper. */
  readonly a: readonly Loop[];
  readonly b: readonly Loop[];
  /** What the other loops leave in the result: themselves, to the last digit. */
  readonly contours: readonly ClosedContour[];
}

/**
 * Takes out of a boolean operation the loops whose box no other loop enters: each stays as it is, as an outline or
 * as a hole, or falls away, and one point of it tells which.
 */
export function setAsideUntouched(a: readonly Loop[], b: readonly Loop[], belongs: Membership): Sorted {
  const loops = [...a, ...b].map((loop, index) => {
    const boxes = loop.segments.map(boundsOfSegment);
    return {
      loop,
      boxes,
      box: boundsOfPoints(boxes.flatMap(({ min, max }) => [min, max])),
      inA: index < a.length,
    };
  });
  const alone = new Set(
    loops.filter((one) =>
      loops.every(
        (other) =>
          other === one ||
          boxesApart(one.box, other.box) ||
          other.boxes.every((box) => boxesApart(one.box, box)),
      ),
    ),
  );
  const windings = (point: Point, without: Loop): readonly [number, number] => {
    let [inA, inB] = [0, 0];
    for (const { loop, inA: ofA } of loops) {
      if (loop === without) continue;
      const winding = windingOf(point, loop.segments);
      if (ofA) inA += winding;
      else inB += winding;
    }
    return [inA, inB];
  };
  const contours = [...alone].flatMap(({ loop, inA }) => {
    const [first] = loop.segments;
    if (first === undefined) return [];
    const [aroundA, aroundB] = windings(pointAt(first, 0.4), loop);
    const outside = belongs(aroundA, aroundB);
    const inside = belongs(aroundA + (inA ? loop.winding : 0), aroundB + (inA ? 0 : loop.winding));
    if (inside === outside) return [];
    return [inside ? counterClockwise(loop.contour) : clockwise(loop.contour)];
  });
  const rest = loops.filter((one) => !alone.has(one));
  return {
    a: rest.filter(({ inA }) => inA).map(({ loop }) => loop),
    b: rest.filter(({ inA }) => !inA).map(({ loop }) => loop),
    contours,
  };
}
