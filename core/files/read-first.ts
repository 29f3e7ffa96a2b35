import { CAUTIONS } from '../cautions/cautions.ts';
import type { JigPlan } from '../jigs/plan-types.ts';
import { JIG_KINDS } from '../jigs/kinds.ts';
import { settingsText } from '../jigs/settings-text.ts';
import type { Order } from '../order/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { formatLength } from '../units/format-length.ts';

/** `read-first.txt`: what is in the folder, how each jig is put together and used, and the usual cautions. */
export function readFirst(order: Order, plan: JigPlan, machine: MachineProfile): string {
  const kinds = new Set(plan.jigs.map(({ kind }) => kind));
  const lines = [
    `Jigs for ${order.name}${order.date === undefined ? '' : `, ${order.date}`}`,
    '',
    'fit.csv       the four overhangs and the sizes of every drawer',
    'schedule.csv  which jig serves which drawer, and at which edge',
    'parts.csv     what to cut from what, and how many',
    'dxf, svg      one cut file for each part; the unit is in its name',
    'manifest.json every file with its size and SHA-256, and what each part sets',
    '',
    'Jigs',
    ...plan.jigs.map((jig) => `  ${jig.id.padEnd(5)}${jig.kind.padEnd(14)}${settingsText(jig, order.unit)}`),
    '',
    ...pinLines(plan, order),
    ...JIG_KINDS.filter(({ name }) => kinds.has(name)).flatMap(({ name, assembly, use }) => [
      `${name[0]?.toUpperCase() ?? ''}${name.slice(1)}`,
      `  1. ${assembly}`,
      `  2. ${use}`,
      '',
    ]),
    'Front face down, left and right swap: "left" and "right" are those of someone who faces the closed cabinet.',
    `Sheet: ${machine.sheet.material}, measured ${machine.sheet.thickness} mm. ${kerfWords(machine)}`,
    'Check the first jig of each kind on a scrap front before you set the order.',
    '',
    'Cautions',
    ...CAUTIONS.map((caution) => `  - ${caution}`),
    '',
  ];
  return lines.join('\r\n');
}

/** Pins are bought, so they are in no cut file. */
function pinLines(plan: JigPlan, { unit }: Order): readonly string[] {
  const lines = plan.jigs.flatMap(({ id, pins }) =>
    pins.map(
      ({ count, diameter, length }) =>
        `  ${id.padEnd(5)}${count} of ${formatLength(diameter, unit)} diameter, ${formatLength(length, unit)} long`,
    ),
  );
  return lines.length === 0 ? [] : ['Pins to buy or cut', ...lines, ''];
}

function kerfWords({ kerf, compensation, kind }: MachineProfile): string {
  if (kerf === 0) return 'Nothing is compensated: the drawn line is the part.';
  const width = `${kind === 'router' ? 'tool' : 'full kerf'} of ${Number(kerf.toFixed(3))} mm`;
  return compensation === 'file'
    ? `The files follow the middle of the cut, for a ${width}: switch the machine's own offset off.`
    : `The files are the finished parts: let the machine offset for its ${width}.`;
}
