import { machineDocument } from '../machine/write-machine.ts';
import { defined } from '../order/defined.ts';
import { standardDocument } from '../rules/write-standard.ts';
import { PROJECT_FORMAT, PROJECT_VERSION } from './project-schema.ts';
import type { Project } from './types.ts';
import type { Unread } from './unread.ts';

type Written = Omit<Project, 'order'> & {
  readonly order: Omit<Project['order'], 'drawers'>;
  readonly unread?: Unread;
};

/** The JSON text of a project file with these drawers, ending in a line break; fields in one order always. */
export function writeDocument(
  { order, standard, machine, registration, sharing, unread = {} }: Written,
  drawers: readonly object[],
): string {
  const { name, date, unit } = order;
  const document = {
    format: PROJECT_FORMAT,
    version: PROJECT_VERSION,
    order: { name, ...defined({ date }), unit, ...unread.order, drawers },
    standard: standardDocument(standard),
    ...(machine === undefined ? {} : { machine: machineDocument(machine) }),
    ...defined({ jigs: registration, sharing: sharing === 'each' ? undefined : sharing }),
    ...unread.document,
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}
