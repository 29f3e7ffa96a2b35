import type { StockScrew } from '../rules/fastening-types.ts';
import type { SourcedLength } from '../rules/types.ts';
import type { Species } from '../rules/wood-types.ts';

/** mm. Bits nearer than this to what is wanted are as wanted. */
const SAME_BIT = 1e-6;

/** A share of the root diameter: 70 % in softwoods, 90 % in hardwoods; Wood Handbook, FPL-GTR-282, ch. 8. */
export const pilotTarget = (screw: StockScrew, { softwood }: Pick<Species, 'softwood'>): number =>
  (softwood ? 0.7 : 0.9) * screw.root.value;

/** The largest drill at hand that is not above the target, so that the thread holds; the smallest where all are. */
export function pilotBit(target: number, bits: readonly SourcedLength[]): number {
  const sizes = bits.map(({ value }) => value);
  const small = sizes.filter((size) => size <= target + SAME_BIT);
  return small.length > 0 ? Math.max(...small) : Math.min(...sizes);
}

/** The smallest drill at hand through which the screw slips; null: none is large enough. */
export function clearanceBit(screw: StockScrew, bits: readonly SourcedLength[]): number | null {
  const large = bits.map(({ value }) => value).filter((size) => size >= screw.diameter.value - SAME_BIT);
  return large.length > 0 ? Math.min(...large) : null;
}
