import { readFileSync } from 'node:fs';
import type { Registration } from '../../core/jigs/plan-types.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { designOrder, type Design, type Workshop } from '../../core/pipeline.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { readMachine } from '../jigs/setups.ts';
import { readStandard } from '../rules/read-standard.ts';

export interface Demo {
  readonly name: string;
  readonly design: Design;
  readonly workshop: Workshop;
}

/** A demo order designed for a machine; throws when there is any error. */
export function demo(
  order: 'harbor-library' | 'boathouse-frameless',
  machine: MachineProfile,
  registration: Registration,
): Demo {
  const frameless = order === 'boathouse-frameless';
  const standard = readStandard(frameless ? 'frameless-undermount.json' : 'face-frame-undermount.json');
  const text = readFileSync(new URL(`../../assets/orders/${order}.csv`, import.meta.url), 'utf8');
  const read = readOrderCsv(text, {
    file: `${order}.csv`,
    name: order,
    date: '2026-12-01',
    unit: frameless ? 'mm' : 'in',
    standard,
  });
  const workshop: Workshop = { standard, machine, registration, font: STROKE_FONT };
  const design = designOrder(read.value, workshop);
  const errors = [...read.findings, ...design.findings].filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
  return {
    name: `${order}, ${machine.name}, ${machine.compensation}, ${registration}`,
    design: design.value,
    workshop,
  };
}

/** The demo orders on the machines that come with the program, and a router that is given tool paths. */
export const demos = (): readonly Demo[] => {
  const router = readMachine('router');
  return [
    demo('harbor-library', readMachine('laser-6'), 'edge'),
    demo('harbor-library', readMachine('laser-3'), 'corner'),
    demo('harbor-library', { ...router, compensation: 'file' }, 'edge'),
    demo('boathouse-frameless', router, 'corner'),
    demo('boathouse-frameless', readMachine('none'), 'edge'),
  ];
};
