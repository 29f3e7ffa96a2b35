import type { Finding } from '../../findings/finding.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** A box is deeper than its own front. */
export function checkBox({ box }: ShopStandard, fault: Fault): readonly Finding[] {
  if (box.depth.value > box.frontThickness.value + SAME_LENGTH) return [];
  return [
    fault('box-depth', 'box.depth', 'the box is no deeper than its front is thick; write a larger depth'),
  ];
}
