import { z } from 'zod';
import { forEachColumn } from '../order/columns.ts';
import { MOST_ROWS } from '../order/lex-csv.ts';
import { nameFault } from '../order/order-name.ts';
import { strict } from '../rules/standard-fields.ts';

export const PROJECT_FORMAT = 'overhang-project';
export const PROJECT_VERSION = 2;

/** A cell as text, or as a plain number that means the same text. */
const cell = z.union([z.string(), z.number().transform(String)], 'write a text or a number').exactOptional();

/** A drawer's cells are the columns of the CSV file, and are read by the same reader. */
const drawer = strict({
  row: z.int().min(0, 'it is below 0; write a row of 0 or more').exactOptional(),
  ...forEachColumn(cell),
});

const rightName = z.string().superRefine((text, context) => {
  const fault = nameFault(text);
  if (fault !== undefined) context.addIssue(fault);
});

const SHARING = 'write "each", "fewest", or a whole number of jigs, 1 or more';

/** `each`, `fewest`, or how many jigs the shop is willing to make. */
const sharing = z.union([z.enum(['each', 'fewest']), z.int().min(1, SHARING)], SHARING);

const TOO_MANY = `there are more than ${MOST_ROWS} drawers; split the order into several`;

/** The document of a project, whose rows, standard and machine are still text. */
const documentSchema = (name: z.ZodType<string>) =>
  strict({
    format: z.literal(PROJECT_FORMAT),
    version: z.literal(PROJECT_VERSION),
    order: strict({
      name,
      date: z.string().exactOptional(),
      unit: z.enum(['in', 'mm']),
      drawers: z.array(z.unknown()).max(MOST_ROWS, TOO_MANY).pipe(z.array(drawer)),
    }),
    standard: z.unknown(),
    machine: z.unknown().optional(),
    /** What the jigs register on. */
    jigs: z.enum(['edge', 'corner']).exactOptional(),
    /** Whether drawers share jigs; absent in older files, and where each distinct overhang has its own. */
    sharing: sharing.exactOptional(),
  });

/** Of a project that is to be made. */
export const projectSchema = documentSchema(rightName);

/** Of a project in work, whose name may be wrong as its cells may. */
export const draftSchema = documentSchema(z.string());

export type ProjectDocument = z.output<typeof projectSchema>;
export type DrawerDocument = z.output<typeof drawer>;
