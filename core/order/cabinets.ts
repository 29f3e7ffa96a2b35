import type { Drawer } from './types.ts';

/** A name to compare: people write `b1` and `B1` for the same cabinet. */
export const comparable = (name: string): string => name.normalize('NFC').toLowerCase();

/** What names a cabinet: a drawer, or a row of an order. */
interface InCabinet {
  readonly room?: string;
  readonly cabinet: string;
}

/** Drawers and rows do not change, so their keys are kept with them. */
const keys = new WeakMap<InCabinet, string>();

/** What tells one cabinet from another: its room and its name. */
export function cabinetKey(of: InCabinet): string {
  const known = keys.get(of);
  if (known !== undefined) return known;
  const key = JSON.stringify([comparable(of.room ?? ''), comparable(of.cabinet)]);
  keys.set(of, key);
  return key;
}

/** Columns of each cabinet of an order, by `cabinetKey`. */
export function columnCounts(drawers: readonly Drawer[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const drawer of drawers) {
    const key = cabinetKey(drawer);
    counts.set(key, Math.max(counts.get(key) ?? 0, drawer.column));
  }
  return counts;
}
