import type { LengthUnit } from '../order/types.ts';
import { formatLength } from '../units/format-length.ts';
import { INCH } from '../units/inch-fraction.ts';
import { roundTo } from '../units/tolerances.ts';
import type { Section } from './types.ts';

/** Where a cut is, from the middle of the jig: `at the middle`, `12 mm towards the viewer`. */
export function sectionText({ at: middle, side }: Section, at: number, unit: LengthUnit): string {
  const off = roundTo((at - middle) * side, 1);
  if (off === 0) return 'at the middle of the jig';
  const length = unit === 'mm' ? formatLength(Math.abs(off), 'mm') : `${(Math.abs(off) / INCH).toFixed(2)}"`;
  return `${length} from the middle, ${off > 0 ? 'nearer' : 'farther'} as seen from the side`;
}
