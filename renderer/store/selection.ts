import type { Draft } from '../../core/project/draft.ts';
import type { Designed } from '../../core/session/types.ts';
import type { Selection } from './types.ts';

export const firstRow = (draft: Draft): string | null => draft.rows[0]?.id ?? null;

/** Where a row was that is no longer there, its neighbour is picked: the one that took its place, or the last. */
export function rowAfterChange(before: Draft, after: Draft, rowId: string | null): string | null {
  // None is picked of an order without rows, or of rows that are all hidden; those stay as they are.
  if (rowId === null) return before.rows.length === 0 ? firstRow(after) : null;
  if (after.rows.some(({ id }) => id === rowId)) return rowId;
  const index = before.rows.findIndex(({ id }) => id === rowId);
  const here = after.rows[Math.min(Math.max(index, 0), after.rows.length - 1)];
  return here?.id ?? null;
}

/** A row with a jig of its own: the one that is picked if it is used there, or else its first. */
export function withRowPicked(
  selection: Selection,
  rowId: string | null,
  designed: Designed | null,
): Selection {
  if (designed === null) return { ...selection, rowId };
  const own = [...designed.uses, ...designed.aids]
    .filter((use) => use.rowId === rowId)
    .map(({ jigId }) => jigId);
  const jigId = own.find((id) => id === selection.jigId) ?? own[0] ?? null;
  return withPartOf({ ...selection, rowId, jigId }, designed);
}

/** A jig with a row that it is used on: the one that is picked if it is, or else the first. */
export function withJigPicked(
  selection: Selection,
  jigId: string | null,
  designed: Designed | null,
): Selection {
  if (designed === null) return { ...selection, jigId };
  const rows = [...designed.uses, ...designed.aids]
    .filter((use) => use.jigId === jigId)
    .map(({ rowId }) => rowId);
  const rowId = rows.find((id) => id === selection.rowId) ?? rows[0] ?? selection.rowId;
  return withPartOf({ ...selection, rowId, jigId }, designed);
}

/** A part with its jig. */
export function withPartPicked(
  selection: Selection,
  partId: string | null,
  designed: Designed | null,
): Selection {
  const part = designed?.parts.find(({ id }) => id === partId);
  if (part === undefined) return { ...selection, partId };
  return { ...withJigPicked(selection, part.jig, designed), partId };
}

/** The same selection after a new design: a jig or part that is gone makes way for one of the same row. */
export const reselected = (selection: Selection, designed: Designed): Selection =>
  same(selection, withRowPicked(selection, selection.rowId, designed));

function withPartOf(selection: Selection, designed: Designed): Selection {
  const own = designed.parts.filter((part) => part.jig === selection.jigId).map(({ id }) => id);
  const partId = own.find((id) => id === selection.partId) ?? own[0] ?? null;
  return { ...selection, partId };
}

/** Keeps the identity of a selection that did not change. */
export const same = (before: Selection, after: Selection): Selection =>
  before.rowId === after.rowId && before.jigId === after.jigId && before.partId === after.partId
    ? before
    : after;
