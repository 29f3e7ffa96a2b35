import type { Edge } from '../../order/types.ts';
import { formatLength } from '../../units/format-length.ts';
import type { FrontCorner } from '../budget/places.ts';
import type { DrawerFit } from '../types.ts';
import type { Readings } from './readings.ts';
import type { Incurable } from './types.ts';

/** mm. Nobody reads a gap finer than this with feeler gauges (common practice, no source). */
const READABLE = 0.1;

/**
 * What the readings tell that no rigid move cures. Eight gaps and three moves leave five things: the sums of
 * opposite gaps (front too wide or high), how those sums differ from end to end (front or opening tapered, or
 * an edge bowed), and the lean of the sides against the rails (out of square). Of the corners' reach out of
 * the face, depth and tilt leave a front that is out at one side, and a twist.
 */
export function incurables(readings: Readings, fit: DrawerFit): readonly Incurable[] {
  const mm = (value: number) => formatLength(Math.abs(value), fit.unit);
  const over = (edge: Edge, corner: FrontCorner): number | undefined => {
    const found = readings.gaps.find((gap) => gap.edge === edge && gap.corner === corner);
    return found === undefined ? undefined : found.seen - found.wanted;
  };
  const found: Incurable[] = [];
  const add = (what: Incurable['what'], amount: number | undefined, words: (amount: number) => string) => {
    if (amount !== undefined && Math.abs(amount) >= READABLE)
      found.push({ what, amount, words: words(amount) });
  };

  const atTop = plus(over('left', 'topLeft'), over('right', 'topRight'));
  const atBottom = plus(over('left', 'bottomLeft'), over('right', 'bottomRight'));
  const atLeft = plus(over('top', 'topLeft'), over('bottom', 'bottomLeft'));
  const atRight = plus(over('top', 'topRight'), over('bottom', 'bottomRight'));
  add('width', mean([atTop, atBottom]), (amount) =>
    amount < 0
      ? `The front is ${mm(amount)} too wide for its opening: the side gaps together stay that much too small. Plane it, half on either side.`
      : `The front is ${mm(amount)} too narrow for its opening: the side gaps together stay that much too large.`,
  );
  add('height', mean([atLeft, atRight]), (amount) =>
    amount < 0
      ? `The front is ${mm(amount)} too high for its opening: the gaps above and below together stay that much too small. Plane its top edge.`
      : `The front is ${mm(amount)} too low for its opening: the gaps above and below together stay that much too large.`,
  );
  add(
    'side taper',
    minus(atTop, atBottom),
    (amount) =>
      `The side gaps together are ${mm(amount)} ${amount > 0 ? 'larger' : 'smaller'} at the top than at the bottom: front or opening is tapered, or an edge is bowed.`,
  );
  add(
    'end taper',
    minus(atRight, atLeft),
    (amount) =>
      `The gaps above and below together are ${mm(amount)} ${amount > 0 ? 'larger' : 'smaller'} at the right than at the left: front or opening is tapered, or an edge is bowed.`,
  );

  const sides = mean([
    minus(over('left', 'bottomLeft'), over('left', 'topLeft')),
    minus(over('right', 'topRight'), over('right', 'bottomRight')),
  ]);
  const rails = mean([
    minus(over('bottom', 'bottomRight'), over('bottom', 'bottomLeft')),
    minus(over('top', 'topLeft'), over('top', 'topRight')),
  ]);
  const square =
    sides === undefined || rails === undefined ? undefined : sides - (rails * fit.frontH) / fit.frontW;
  add(
    'out of square',
    square,
    (amount) =>
      `The opening is out of square: over the height of the front its sides lean ${mm(amount)} to the ${amount > 0 ? 'right' : 'left'} against its rails. The moves share that out; scribe the front, or rack the cabinet straight, to be rid of it.`,
  );

  const out = (corner: FrontCorner) => readings.proud.find((one) => one.corner === corner)?.seen;
  const topRight = minus(out('topRight'), out('topLeft'));
  const bottomRight = minus(out('bottomRight'), out('bottomLeft'));
  add(
    'one side out',
    mean([topRight, bottomRight]),
    (amount) =>
      `The ${amount > 0 ? 'right' : 'left'} side stands ${mm(amount)} further out than the other: depth moves both; set one slide back.`,
  );
  add(
    'twist',
    minus(topRight, bottomRight),
    (amount) => `Front or cabinet is twisted by ${mm(amount)}, seen from corner to corner.`,
  );
  return found;
}

const plus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a + b;

const minus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a - b;

/** The mean of those that are known. */
function mean(values: readonly (number | undefined)[]): number | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? undefined : known.reduce((sum, value) => sum + value, 0) / known.length;
}
