import type { Draft } from '../../core/project/draft.ts';
import { DEMO_ROWS } from './demo-rows.ts';
import { FIRST_DOCUMENTS } from './first-documents.ts';

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

/** The demo order, which is open at the first start. */
export const demoDraft = (): Draft => ({
  ...emptyDraft(),
  name: 'Harbor library',
  date: '2026-12-01',
  rows: DEMO_ROWS,
});
