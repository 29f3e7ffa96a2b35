import type { Drawer } from './types.ts';

/** A name to compare: people write `b1` and `B1` for the same cabinet. */
export const comparable = (name: string): string => name.normalize('NFC').toLowerCase();

/** What tells one cabinet from another: its room and its name. */
export const cabinetKey = (cabinet: Pick<Drawer, 'room' | 'cabinet'>): string =>
  JSON.stringify([comparable(cabinet.room ?? ''), comparable(cabinet.cabinet)]);

/** Columns of each cabinet of an order, by `cabinetKey`. */
export function columnCounts(drawers: readonly Drawer[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const drawer of drawers) {
    const key = cabinetKey(drawer);
    counts.set(key, Math.max(counts.get(key) ?? 0, drawer.column));
  }
  return counts;
}
