import { createHash } from 'node:crypto';
import packageJson from '../../package.json';
import type { OutputChoice } from '../../core/files/output-choice.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { Order } from '../../core/order/types.ts';
import type { Workshop } from '../../core/pipeline.ts';

interface MadeFrom {
  /** As it was read. */
  readonly text: string;
  readonly order: Order;
  readonly workshop: Workshop;
  readonly sharing: JigSharing;
  readonly choice: OutputChoice;
}

/** SHA-256 over all that the files of an order depend on: its text, standard, machine, options, choice, program version. */
export function madeFrom({ text, order, workshop, sharing, choice }: MadeFrom): string {
  const { standard, machine, registration } = workshop;
  const { name, date = null, unit } = order;
  const of = [
    packageJson.version,
    text,
    { name, date, unit },
    standard,
    machine,
    { registration, sharing },
    {
      ...choice,
      kinds: choice.kinds.toSorted(),
      jigs: choice.jigs === 'all' ? 'all' : choice.jigs.toSorted(),
    },
  ];
  return createHash('sha256').update(JSON.stringify(of)).digest('hex');
}
