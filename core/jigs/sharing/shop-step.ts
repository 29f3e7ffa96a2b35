import { INCH } from '../../units/inch-fraction.ts';
import type { LengthUnit } from '../../units/unit.ts';

/**
 * mm. What a shop reads off a rule: the finest fraction of an inch that lengths are shown in, or half a
 * millimetre (common practice, no source).
 */
export const SHOP_STEP: Readonly<Record<LengthUnit, number>> = { in: INCH / 64, mm: 0.5 };
