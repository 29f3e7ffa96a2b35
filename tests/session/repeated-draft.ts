import type { Draft } from '../../core/project/draft.ts';

/** An order of so many drawers: a draft's cabinets again and again, on other floors. */
export function repeatedDraft(draft: Draft, count: number): Draft {
  const rows = Array.from({ length: count }, (_, index) => {
    const row = draft.rows[index % draft.rows.length];
    if (row === undefined) throw new RangeError('repeatedDraft: the draft has no rows');
    const room = `Floor ${Math.floor(index / draft.rows.length) + 1}, ${row.cells.room ?? 'room'}`;
    return { id: `r${index + 1}`, cells: { ...row.cells, room } };
  });
  return { ...draft, rows };
}
