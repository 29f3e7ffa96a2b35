import { CONTOUR_ERROR } from '../units/tolerances.ts';
import { chainSize, type Chain } from './chain.ts';
import { lengthOf } from './measure.ts';
import { pointAt, segmentsOf } from './segments.ts';
import type { ClosedContour, Point } from './types.ts';

/** Whether a ring is thinner than the allowed error: rounding, where sides of the source lie on each other. */
export function isSplinter(chain: Chain): boolean {
  const { area, length } = chainSize(chain);
  return Math.abs(area) <= (CONTOUR_ERROR * length) / 2;
}

/** mm. Contours are measured at every segment's start, its quarters, and at least once in this length. */
const SAMPLE = 5;

/** The largest error in mm over sampled points of contours, by a function that gives the error at a point. */
export function strays(contours: readonly ClosedContour[], errorAt: (point: Point) => number): number {
  let worst = 0;
  for (const segment of contours.flatMap(segmentsOf)) {
    const steps = Math.max(4, Math.ceil(lengthOf(segment) / SAMPLE));
    for (let step = 0; step < steps; step += 1) {
      worst = Math.max(worst, errorAt(pointAt(segment, step / steps)));
    }
  }
  return worst;
}
