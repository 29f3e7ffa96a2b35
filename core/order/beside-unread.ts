import { cabinetKey } from './cabinets.ts';
import type { RawRow } from './raw-row.ts';

/**
 * Whether a row that could not be read stands within or next to the rows of the cabinet that `row` is in,
 * so that it may be one of them.
 */
export function besideUnread(row: number, raws: readonly RawRow[], unread: readonly number[]): boolean {
  const index = raws.findIndex((raw) => raw.row === row);
  const key = keyOf(raws[index]);
  let first = index;
  let last = index;
  while (first > 0 && keyOf(raws[first - 1]) === key) first -= 1;
  while (last < raws.length - 1 && keyOf(raws[last + 1]) === key) last += 1;
  const above = raws[first - 1]?.row ?? 0;
  const below = raws[last + 1]?.row ?? Number.POSITIVE_INFINITY;
  return unread.some((one) => one > above && one < below);
}

const keyOf = (raw: RawRow | undefined): string =>
  cabinetKey({ room: raw?.cells.room ?? '', cabinet: raw?.cells.cabinet ?? '' });
