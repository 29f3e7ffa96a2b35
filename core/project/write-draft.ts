import { ORDER_COLUMNS } from '../order/columns.ts';
import { defined } from '../order/defined.ts';
import type { Draft, DraftRow } from './draft.ts';
import { writeDocument } from './write-document.ts';

/** Writes a draft as the JSON text of a project file that `parseDraft` reads back the same, but for the ids of its rows. */
export const writeDraft = (draft: Draft): string =>
  writeDocument({ ...draft, order: draft }, draft.rows.map(drawerDocument));

/** The cells in the order of the columns, then what is not read. */
const drawerDocument = ({ cells, unread }: DraftRow): object => ({
  ...defined(Object.fromEntries(ORDER_COLUMNS.map((column) => [column, cells[column]]))),
  ...unread,
});
