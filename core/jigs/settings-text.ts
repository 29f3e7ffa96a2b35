import type { LengthUnit } from '../order/types.ts';
import { bitSizes } from '../units/bit-sizes.ts';
import { formatLength } from '../units/format-length.ts';
import type { Drilling, Jig } from './types.ts';

/**
 * What a jig sets, for people: `left or right 1 7/16", left or right 7/8"`; of an aid to drilling, what it
 * drills: `2 holes of 2.8 mm, 15° at most`.
 */
export const settingsText = (jig: Jig, unit: LengthUnit): string =>
  jig.drilling === undefined ? overhangsText(jig, unit) : drillingText(jig.drilling, unit);

const overhangsText = (jig: Jig, unit: LengthUnit): string =>
  jig.seats
    .flatMap(({ sets }) => sets)
    .map(
      ({ edges, overhang, backBevel, frontThickness }) =>
        `${edges.join(' or ')} ${formatLength(overhang, unit)}${backBevel === 0 ? '' : ` (back bevel ${backBevel}°, front ${formatLength(frontThickness, unit)})`}`,
    )
    .join(', ');

function drillingText({ bores, end }: Drilling, unit: LengthUnit): string {
  const bits = [...new Set(bores.map(({ bit }) => bitSizes(bit, unit).join(' or ')))];
  const steepest = Math.max(0, ...bores.map(({ angle }) => angle));
  const lean = steepest === 0 ? '' : `, leaning ${Number(steepest.toFixed(1))}° at most`;
  return `${bores.length === 1 ? '1 hole' : `${bores.length} holes`} of ${bits.join(', ')} from the ${end}${lean}`;
}
