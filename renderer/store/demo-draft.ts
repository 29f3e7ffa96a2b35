import harborLibrary from '../../assets/orders/harbor-library.csv?raw';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { FIRST_DOCUMENTS } from './first-documents.ts';

/** The demo order, which is open at the first start. */
export function demoDraft(): Draft {
  const { value, findings } = draftFromCsv(harborLibrary, {
    file: 'harbor-library.csv',
    name: 'Harbor library',
    date: '2026-12-01',
    unit: 'in',
    standard: FIRST_DOCUMENTS.standard,
    machine: FIRST_DOCUMENTS.machine,
    registration: 'edge',
    sharing: 'each',
  });
  if (findings.length > 0) throw new Error(findings.map(({ message }) => message).join(' '));
  return value;
}

/** An order without drawers. */
export const emptyDraft = (): Draft => ({
  name: 'New order',
  unit: 'in',
  rows: [],
  standard: FIRST_DOCUMENTS.standard,
  machine: FIRST_DOCUMENTS.machine,
  registration: 'edge',
  sharing: 'each',
});
