import type { LengthUnit } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Sharing } from './types.ts';

/** What is known of a plan, in a sentence or two. */
export function proofWords(
  { count, curve, proof }: Pick<Sharing, 'count' | 'curve' | 'proof'>,
  unit: LengthUnit,
): string {
  if (proof === 'optimal') {
    return count > (curve[0]?.jigs ?? 0)
      ? 'Proved: no plan of so many jigs leaves less to adjust.'
      : 'Proved: no plan of fewer jigs sets every drawer within reach of its adjusters, and none of so many leaves less to adjust.';
  }
  const { jigs, total } = proof.bound;
  return `The search was cut short: no plan takes fewer than ${jigs} jigs, and none of so many as this leaves less than ${formatLength(total, unit)} to adjust; within that there may be a better one.`;
}
