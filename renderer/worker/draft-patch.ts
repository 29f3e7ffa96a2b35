import type { Draft } from '../../core/project/draft.ts';
import type { DraftPatch } from './messages.ts';
import { listPatch, patchedList } from './patches.ts';

/** What turns one draft into another; all of it when there is none before. */
export function draftPatch(before: Draft | null, after: Draft): DraftPatch {
  const { rows, ...fields } = after;
  if (before === null) return { rows: rows.map((item) => ({ item })), fields };
  const changed = Object.entries(fields).filter(([key, value]) => Reflect.get(before, key) !== value);
  const ofRows = listPatch(before.rows, rows);
  return {
    ...(ofRows === undefined ? {} : { rows: ofRows }),
    fields: Object.fromEntries(changed),
    ...(before.date !== undefined && after.date === undefined ? { undated: true } : {}),
  };
}

/** The other draft; what is in both keeps its identity. */
export function patchedDraft(before: Draft | null, { rows, fields, undated }: DraftPatch): Draft {
  const changed: Partial<Draft> = { ...before, ...fields };
  const { name, date, unit, standard, machine, registration, sharing } = changed;
  if (
    name === undefined ||
    unit === undefined ||
    standard === undefined ||
    machine === undefined ||
    registration === undefined ||
    sharing === undefined
  ) {
    throw new RangeError('patchedDraft: the first patch must hold the whole draft');
  }
  return {
    name,
    ...(date === undefined || undated === true ? {} : { date }),
    unit,
    rows: patchedList(before?.rows ?? [], rows),
    standard,
    machine,
    registration,
    sharing,
  };
}
