import { CAUTIONS } from '../cautions/cautions.ts';
import type { JigPlan } from '../jigs/plan-types.ts';
import { settingsText } from '../jigs/settings-text.ts';
import type { Order } from '../order/types.ts';
import type { MachineProfile } from '../machine/profile.ts';

/** How each kind goes together and is used, for someone who has never seen one. */
const STEPS: Readonly<Record<string, readonly string[]>> = {
  'bottom fence': [
    'Stack: plate on top, dust layer under it if there is one, then the lip layers. Pins or keys go in one way only. Glue, and keep glue off the working edges.',
    'Lay the front face down. Hook the lip behind the bottom edge, press it up to the edge, and push the bottom of the box against the plate.',
  ],
  'side spacer': [
    'Stack: plate, dust layer if there is one, lip layers. A block of two widths has a lip on either face; the label that looks up says what it sets.',
    'Hook the lip behind the side edge that the schedule names, and push the side of the box against the plate.',
  ],
  'step profile': [
    'Glue the profiles face to face; pins or keys line them up.',
    'Stand the profile on the back of the front with its lip against the edge, and push the box against its upper face. Slide it along the edge to check the other end.',
  ],
  'corner fence': [
    'Stack: plate on top, dust layer under it if there is one, then the lip layers. Left and right are a pair: the arrow points to the cabinet’s left.',
    'Hook both lips over the lower corner that the label names, and push the box into the inside corner. One hand of the pair sets the box; the other one checks it.',
  ],
};

/** `read-first.txt`: what is in the folder, how each jig is put together and used, and the usual cautions. */
export function readFirst(order: Order, plan: JigPlan, machine: MachineProfile): string {
  const kinds = [...new Set(plan.jigs.map(({ kind }) => kind))];
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
    ...kinds.flatMap((kind) => [
      `${kind[0]?.toUpperCase() ?? ''}${kind.slice(1)}`,
      ...(STEPS[kind] ?? []).map((step, index) => `  ${index + 1}. ${step}`),
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

function kerfWords({ kerf, compensation, kind }: MachineProfile): string {
  if (kerf === 0) return 'Nothing is compensated: the drawn line is the part.';
  const width = `${kind === 'router' ? 'tool' : 'full kerf'} of ${Number(kerf.toFixed(3))} mm`;
  return compensation === 'file'
    ? `The files follow the middle of the cut, for a ${width}: switch the machine's own offset off.`
    : `The files are the finished parts: let the machine offset for its ${width}.`;
}
