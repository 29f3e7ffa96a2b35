import { SAME_OVERHANG } from '../../units/tolerances.ts';
import type { Range } from '../cover/types.ts';
import type { JigKind } from '../types.ts';
import type { Room } from './lap-room.ts';

/** Per mm. The ends of ranges are drawn in to hundredths, so that no jig is made for a length of nine decimals. */
const PER_MM = 100;

/**
 * The overhangs of a jig that serve a drawer, around the one that it wants. Ends are drawn in to hundredths of a
 * mm and to what the kind of jig can be made for; `refuses` is asked for each end, and an end that is refused is
 * given up. Never narrower than what counts as the same overhang.
 */
export function overhangRange(
  wanted: number,
  room: Room,
  kind: JigKind,
  refuses: (overhang: number) => boolean,
  parameter = 'overhang',
): Range {
  const spec = kind.parameters.find(({ name }) => name === parameter);
  if (spec === undefined) throw new RangeError(`overhangRange: a ${kind.name} has no parameter ${parameter}`);
  const lo = Math.max(Math.ceil((wanted - room.less) * PER_MM) / PER_MM, spec.min);
  const hi = Math.min(Math.floor((wanted + room.more) * PER_MM) / PER_MM, spec.max);
  const half = SAME_OVERHANG / 2;
  return {
    interval: [
      lo >= wanted - half || refuses(lo) ? wanted - half : lo,
      hi <= wanted + half || refuses(hi) ? wanted + half : hi,
    ],
    wanted,
  };
}
