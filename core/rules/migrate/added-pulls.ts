import type { LengthUnit } from '../../order/types.ts';
import { NO_SOURCE } from '../no-source.ts';
import { added } from './added-text.ts';

/** The usual sorts of pulls. */
export function addedPulls(unit: LengthUnit) {
  const none = unit === 'in' ? '0 in' : '0 mm';
  const pull = (holes: 1 | 2, centers: string) => ({
    holes,
    centers: added(centers, holes === 1 ? `${NO_SOURCE}: it has one hole` : NO_SOURCE),
    holeDiameter: added('5 mm'),
    height: { from: 'middle', distance: added(none) },
    pairFrom: added(unit === 'in' ? '30 in' : '760 mm'),
  });
  return { bar: pull(2, '96 mm'), cup: pull(2, '64 mm'), knob: pull(1, none) };
}
