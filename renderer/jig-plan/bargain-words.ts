import type { Bargain } from '../../core/jigs/sharing/picked-point.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

/** `14 jigs, the fewest: 31.2 mm to adjust in all, 0.8 mm at most` */
export function bargainWords({ jigs, total, largest, sharing }: Bargain, unit: LengthUnit): string {
  const which = sharing === 'each' ? ', each its own' : sharing === 'fewest' ? ', the fewest' : '';
  const left =
    total === 0
      ? 'nothing to adjust'
      : `${formatLength(total, unit)} to adjust in all, ${formatLength(largest, unit)} at most`;
  return `${jigs} ${jigs === 1 ? 'jig' : 'jigs'}${which}: ${left}`;
}
