import type { LengthUnit } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import type { Sharing } from './types.ts';

type Proved = Pick<Sharing, 'count' | 'curve' | 'proof' | 'step' | 'roundingAdds'>;

/** What is known of a plan, in a sentence or two; and what rounding to the shop's fraction adds to it. */
export const proofWords = (plan: Proved, unit: LengthUnit): string =>
  [boundWords(plan, unit), ...roundingWords(plan, unit)].join(' ');

function boundWords({ count, curve, proof }: Proved, unit: LengthUnit): string {
  if (proof === 'optimal') {
    return count > (curve[0]?.jigs ?? 0)
      ? 'Proved: no plan of so many jigs leaves less to adjust.'
      : 'Proved: no plan of fewer jigs sets every drawer within reach of its adjusters, and none of so many leaves less to adjust.';
  }
  const { jigs, total } = proof.bound;
  return `The search was cut short: no plan takes fewer than ${jigs} jigs, and none of so many as this leaves less than ${formatLength(total, unit)} to adjust; within that there may be a better one.`;
}

/** The proof is of the plan before its overhangs were rounded. */
const roundingWords = ({ step, roundingAdds }: Proved, unit: LengthUnit): readonly string[] =>
  Math.abs(roundingAdds) < SAME_LENGTH
    ? []
    : [
        `That is before shared overhangs were rounded to ${formatLength(step, unit)}, which costs no jig and ${roundingAdds > 0 ? 'adds' : 'saves'} ${formatLength(Math.abs(roundingAdds), unit)} to adjust in all.`,
      ];
