import { z } from 'zod';
import { forEachColumn } from '../order/columns.ts';
import { readNameCell } from '../order/text-cell.ts';
import { strict } from '../rules/standard-fields.ts';

export const PROJECT_FORMAT = 'overhang-project';
export const PROJECT_VERSION = 1;

/** A cell as text, or as a plain number that means the same text. */
const cell = z.union([z.string(), z.number().transform(String)], 'write a text or a number').exactOptional();

/** A drawer's cells are the columns of the CSV file, and are read by the same reader. */
const drawer = strict({
  row: z.int().min(0, 'it is below 0; write a row of 0 or more').exactOptional(),
  ...forEachColumn(cell),
});

const name = z.string().superRefine((text, context) => {
  const read = readNameCell(text, { unit: 'in', styles: [], cabinetKinds: [] });
  if (text.trim() === '') context.addIssue('it is empty; write a name');
  else if (!read.ok) context.addIssue(read.reason);
});

/** The document of a project, whose rows and standard are still text. */
export const projectSchema = strict({
  format: z.literal(PROJECT_FORMAT),
  version: z.literal(PROJECT_VERSION),
  order: strict({
    name,
    date: z.string().exactOptional(),
    unit: z.enum(['in', 'mm']),
    drawers: z.array(drawer),
  }),
  standard: z.unknown(),
});

export type DrawerDocument = z.output<typeof drawer>;
