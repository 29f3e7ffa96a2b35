import type { OrderColumn } from '../../core/order/columns.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { parseLength } from '../../core/units/parse-length.ts';
import { sumLength } from '../../core/units/sum-length.ts';
import { writeLength } from '../../core/units/write-length.ts';

/** The columns that hold one length. */
const LENGTHS: ReadonlySet<OrderColumn> = new Set([
  'opening_w',
  'opening_h',
  'front_w',
  'front_h',
  'box_w',
  'box_h',
  'box_d',
  'front_thickness',
  'box_side',
  'box_front',
]);

/**
 * What a sum in a length's cell comes to, as it is written there; null for anything that is no sum.
 *
 * @example sumInCell('opening_w', '18 + 3/8', 'in') // '18-3/8 in'
 */
export function sumInCell(column: OrderColumn, text: string, unit: LengthUnit): string | null {
  if (!LENGTHS.has(column) || parseLength(text, { unit }).ok) return null;
  const sum = sumLength(text, { unit });
  return sum.ok ? writeLength(sum.mm, unit) : null;
}
