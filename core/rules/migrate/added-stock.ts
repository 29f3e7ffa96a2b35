import type { LengthUnit } from '../../order/types.ts';
import { parseLength } from '../../units/parse-length.ts';
import { writeLength } from '../../units/write-length.ts';
import { NO_SOURCE } from '../no-source.ts';
import { added } from './added-text.ts';

const LENGTHS = ['1 in', '1-1/8 in', '1-1/4 in', '1-1/2 in'] as const;

const DIAMETER = 'ASME B18.6.1, as a public list of screws quotes it: 0.060 in + 0.013 in for each number';
const ROOT = 'NDS Appendix, Table L3, from memory';
const PAN_HEAD = 'ASME B18.6.4-1998, pan heads, largest diameter';
const WASHER_HEAD = 'typical of trade charts, no standard seen';
const THREAD = `${NO_SOURCE}: threaded over its whole length`;

const KINDS = [
  { gauge: 6, head: 'pan', diameter: '0.138 in', root: '0.113 in', over: '0.270 in', from: PAN_HEAD },
  { gauge: 8, head: 'pan', diameter: '0.164 in', root: '0.131 in', over: '0.322 in', from: PAN_HEAD },
  {
    gauge: 8,
    head: 'round washer',
    diameter: '0.164 in',
    root: '0.131 in',
    over: '0.376 in',
    from: WASHER_HEAD,
  },
] as const;

/** The screws that a shop has at hand, thin ones first. */
export const addedStock = (unit: LengthUnit) =>
  KINDS.flatMap(({ gauge, head, diameter, root, over, from }) =>
    LENGTHS.map((length) => ({
      name: `#${gauge} x ${length} ${head}`,
      gauge,
      head,
      diameter: added(inUnit(diameter, unit), DIAMETER),
      root: added(inUnit(root, unit), ROOT),
      headDiameter: added(inUnit(over, unit), from),
      length: added(inUnit(length, unit)),
      thread: added(inUnit(length, unit), THREAD),
    })),
  );

/** An inch size of the trade in words of the shop's unit. */
export function inUnit(text: string, unit: LengthUnit): string {
  const length = parseLength(text, { unit: 'in' });
  if (!length.ok) throw new Error(`no length: ${text}`);
  return writeLength(length.mm, unit);
}
