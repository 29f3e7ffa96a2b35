import { z } from 'zod';
import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { checkFormat } from '../order/check-format.ts';
import { ORDER_COLUMNS, type OrderColumn } from '../order/columns.ts';
import { defined } from '../order/defined.ts';
import { fieldFindings } from '../order/field-findings.ts';
import type { Registration } from '../jigs/plan-types.ts';
import type { JigSharing } from '../jigs/sharing/types.ts';
import { parseMachine } from '../machine/parse-machine.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { parseStandard } from '../rules/parse-standard.ts';
import type { ShopStandard } from '../rules/types.ts';
import { projectFrom1 } from './migrate/1-to-2.ts';
import {
  PROJECT_FORMAT,
  PROJECT_VERSION,
  type draftSchema,
  type DrawerDocument,
  type ProjectDocument,
} from './project-schema.ts';
import { splitUnread, type Unread, type UnreadFields } from './unread.ts';

const FORMAT = {
  format: PROJECT_FORMAT,
  version: PROJECT_VERSION,
  what: 'project file',
  code: 'project',
} as const;

/** The cells of a drawer, trimmed, and the row of the file that it came from, if it says so. */
export interface DocumentRow {
  readonly row: number;
  /** Fields that the program does not read, when there are any. */
  readonly unread?: UnreadFields;
  readonly cells: Readonly<Partial<Record<OrderColumn, string>>>;
}

/** A project file whose structure is right: standard and machine are read, the cells are still text. */
export interface ReadDocument {
  readonly order: Omit<ProjectDocument['order'], 'drawers'>;
  readonly rows: readonly DocumentRow[];
  readonly standard: ShopStandard;
  /** Absent when the file holds none. */
  readonly machine?: MachineProfile;
  readonly registration?: Registration;
  readonly sharing?: JigSharing;
  readonly unread: Unread;
}

const versionSchema = z.object({ version: z.int() });

/** Reads the structure of a project file, of this or an older version; the value is null when any of it is wrong. */
export function readDocument(
  json: unknown,
  file: string,
  schema: typeof draftSchema,
  /** What else the caller finds wrong with the order, told before the standard's faults. */
  checkOrder: (order: ReadDocument['order']) => readonly Finding[],
): Outcome<ReadDocument | null> {
  const format = checkFormat(json, FORMAT, { file });
  if (format !== undefined) return { value: null, findings: [format] };
  const split = splitUnread(versionSchema.parse(json).version === 1 ? projectFrom1(json) : json, file);
  const read = schema.safeParse(split.read);
  if (!read.success) {
    const wrong = fieldFindings(read.error.issues, split.read, 'project/field', { file });
    return { value: null, findings: [...wrong, ...split.findings] };
  }
  const { drawers, ...order } = read.data.order;
  const standard = parseStandard(read.data.standard, file, ['standard']);
  const machine =
    read.data.machine === undefined ? undefined : parseMachine(read.data.machine, file, ['machine']);
  const findings = [
    ...split.findings,
    ...checkOrder(order),
    ...standard.findings,
    ...(machine?.findings ?? []),
  ];
  if (standard.value === null || machine?.value === null || hasErrors(split.findings)) {
    return { value: null, findings };
  }
  return {
    value: {
      order,
      rows: drawers.map((drawer, index) => ({
        row: drawer.row ?? 0,
        cells: cellsOf(drawer),
        ...defined({ unread: split.unreadOfDrawers.get(index) }),
      })),
      unread: split.unread,
      standard: standard.value,
      ...(machine === undefined ? {} : { machine: machine.value }),
      ...(read.data.jigs === undefined ? {} : { registration: read.data.jigs }),
      ...(read.data.sharing === undefined ? {} : { sharing: read.data.sharing }),
    },
    findings,
  };
}

function cellsOf(drawer: DrawerDocument): DocumentRow['cells'] {
  const cells: Partial<Record<OrderColumn, string>> = {};
  for (const column of ORDER_COLUMNS) {
    const text = drawer[column]?.trim() ?? '';
    if (text !== '') cells[column] = text;
  }
  return cells;
}
