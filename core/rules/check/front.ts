import type { Finding } from '../../findings/finding.ts';
import { comparable } from '../../order/cabinets.ts';
import { quoteText } from '../../order/quote-text.ts';
import { didYouMean } from '../../order/suggest.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** The front's wood is one of the species, its air gets damper from dry to damp, and its groove is inside it. */
export const checkFront = (standard: ShopStandard, fault: Fault): readonly Finding[] => [
  ...checkSpecies(standard, fault),
  ...checkAir(standard, fault),
  ...checkGroove(standard, fault),
];

function checkSpecies({ front, species }: ShopStandard, fault: Fault): readonly Finding[] {
  const { value } = front.wood.species;
  const known = Object.keys(species);
  if (known.includes(value)) return [];
  const near = known.find((name) => comparable(name) === comparable(value));
  const hint = near === undefined ? didYouMean(value, known) : ` (did you mean ${near}?)`;
  const what = `there is no species ${quoteText(value)}${hint}; write one of ${known.join(', ') || 'the species, of which there are none'}`;
  return [fault('species-unknown', 'front.wood.species', what)];
}

function checkAir({ front: { wood } }: ShopStandard, fault: Fault): readonly Finding[] {
  const { dry, damp, shop } = wood;
  if (dry.humidity.value > damp.humidity.value) {
    const what = 'the dry air is damper than the damp air; write a smaller humidity';
    return [fault('air-order', 'front.wood.dry.humidity', what)];
  }
  const within = shop.humidity.value >= dry.humidity.value && shop.humidity.value <= damp.humidity.value;
  if (within) return [];
  const what =
    'the air of the shop is outside the air that the fronts live in; write a humidity between dry and damp';
  return [fault('air-order', 'front.wood.shop.humidity', what)];
}

function checkGroove({ front }: ShopStandard, fault: Fault): readonly Finding[] {
  const { behind, width } = front.groove;
  if (behind.value + width.value < front.thickness.value - SAME_LENGTH) return [];
  const what =
    'the groove, with the wood behind it, is no thinner than the front; write a narrower one, or less behind it';
  return [fault('groove-outside', 'front.groove.width', what)];
}
