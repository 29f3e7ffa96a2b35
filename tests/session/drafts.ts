import { readFileSync } from 'node:fs';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { readMachine } from '../jigs/setups.ts';
import { readStandard } from '../rules/read-standard.ts';
import { repeatedDraft } from './repeated-draft.ts';

/** A demo order as a draft; throws when its file is at fault. */
export function demoDraft(order: 'harbor-library' | 'boathouse-frameless' = 'harbor-library'): Draft {
  const frameless = order === 'boathouse-frameless';
  const text = readFileSync(new URL(`../../assets/orders/${order}.csv`, import.meta.url), 'utf8');
  const { value, findings } = draftFromCsv(text, {
    file: `${order}.csv`,
    name: order,
    date: '2031-05-20',
    unit: frameless ? 'mm' : 'in',
    standard: readStandard(frameless ? 'frameless-undermount.json' : 'face-frame-undermount.json'),
    machine: readMachine('laser-6'),
    registration: 'edge',
  });
  if (findings.length > 0) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}

/** The first rows of a draft. */
export const firstRows = (draft: Draft, count: number): Draft => ({
  ...draft,
  rows: draft.rows.slice(0, count),
});

/** Seven drawers of the demo order with slab fronts, whose screws are soon found. */
export function workroomRows(): Draft {
  const draft = demoDraft();
  return { ...draft, rows: draft.rows.filter(({ cells }) => cells.room === 'Workroom').slice(0, 7) };
}

/** An order of so many drawers: the demo order's cabinets again and again, on other floors. */
export const largeDraft = (count: number): Draft => repeatedDraft(demoDraft(), count);
