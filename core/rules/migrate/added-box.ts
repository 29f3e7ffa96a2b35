import type { LengthUnit } from '../../order/types.ts';
import { NO_SOURCE } from '../no-source.ts';
import { added } from './added-text.ts';

/** How deep a box is, and where its bottom is. */
export function addedBox(unit: LengthUnit) {
  const either = (inches: string, metric: string) => added(unit === 'in' ? inches : metric, NO_SOURCE);
  return {
    depth: either('21 in', '500 mm'),
    bottom: { thickness: either('1/4 in', '6 mm'), raised: either('1/2 in', '13 mm') },
  };
}
