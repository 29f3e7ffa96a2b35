import { z } from 'zod';
import type { LengthUnit } from '../../order/types.ts';
import { lengthText, sourced, strict, words } from '../standard-fields.ts';
import { angleText, forceText, numberText } from './quantity-fields.ts';

/** ASME B18.6.1 numbers its screws from 0 to 24. */
const LARGEST_GAUGE = 24;

/** Degrees. Beyond it a screw lies rather in the joint than across it; common practice, no source. */
const STEEPEST_SCREW = 60;

/** The document of how a shop screws fronts to boxes. */
export function fasteningSchema(unit: LengthUnit) {
  const length = sourced(lengthText(unit));
  const lengthOrZero = sourced(lengthText(unit, { zero: true }));
  const gauge = `write a whole number from 0 to ${LARGEST_GAUGE}`;
  const screw = strict({
    name: words,
    gauge: z.int(gauge).min(0, gauge).max(LARGEST_GAUGE, gauge),
    head: z.enum(['flat', 'pan', 'round washer']),
    diameter: length,
    root: length,
    headDiameter: length,
    length,
    thread: length,
  });
  return strict({
    stock: z.array(screw).readonly(),
    bits: z.array(length).readonly(),
    cover: lengthOrZero,
    bite: length,
    edgeMargin: lengthOrZero,
    headRoom: lengthOrZero,
    pullRoom: lengthOrZero,
    driverRoom: lengthOrZero,
    place: strict({ side: length, height: length }),
    spacing: length,
    largestAngle: sourced(angleText(0, STEEPEST_SCREW)),
    angleStep: sourced(angleText(0.1, STEEPEST_SCREW)),
    holes: sourced(z.enum(['pilot through both', 'clearance in the box front'])),
    pull: sourced(forceText(unit)),
    safety: sourced(numberText(1, 100)),
    driver: z.array(strict({ name: words, radius: length, length })).readonly(),
    guide: strict({
      boreFit: lengthOrZero,
      boreLength: sourced(numberText(0.1, 20)),
      bushing: lengthOrZero,
    }),
  });
}
