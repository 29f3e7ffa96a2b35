import type { DraftRow } from './draft.ts';

/** Rows with ids of their own, `r1`, `r2` ..., none of which is one of `taken`. */
export function draftRows(
  cells: readonly DraftRow['cells'][],
  taken: readonly DraftRow[] = [],
): readonly DraftRow[] {
  const last = Math.max(0, ...taken.map(({ id }) => numberOf(id)));
  return cells.map((own, index) => ({ id: `r${last + index + 1}`, cells: own }));
}

const numberOf = (id: string): number => Number(/^r(\d+)$/.exec(id)?.[1] ?? 0);
