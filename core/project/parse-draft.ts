import type { Outcome } from '../findings/finding.ts';
import { defined } from '../order/defined.ts';
import type { Draft } from './draft.ts';
import { draftRows } from './draft-rows.ts';
import { draftSchema } from './project-schema.ts';
import { readDocument } from './read-document.ts';

/** What a project file may leave out. */
export type DraftDefaults = Pick<Draft, 'machine' | 'registration'>;

/**
 * Reads a project file to work on; the value is null when its structure, its standard or its machine is at
 * fault. Fields that the program does not know are kept, with a warning. Name, date and cells stay text, right or not: the session tells what is wrong with them.
 */
export function parseDraft(json: unknown, file: string, defaults: DraftDefaults): Outcome<Draft | null> {
  const { value, findings } = readDocument(json, file, draftSchema, () => []);
  if (value === null) return { value, findings };
  const { order, rows, standard, machine, registration, sharing = 'each', unread } = value;
  const draft: Draft = {
    ...order,
    rows: draftRows(rows.map(({ cells }) => cells)).map((row, index) => ({
      ...row,
      ...defined({ unread: rows[index]?.unread }),
    })),
    standard,
    machine: machine ?? defaults.machine,
    registration: registration ?? defaults.registration,
    sharing,
    ...(Object.keys(unread).length === 0 ? {} : { unread }),
  };
  return { value: draft, findings };
}
