import { CAUTIONS } from '../cautions/cautions.ts';
import type { OrderPlan } from '../jigs/plan-order.ts';
import { AID_KINDS } from '../jigs/aids/kinds.ts';
import { JIG_KINDS } from '../jigs/kinds.ts';
import { settingsText } from '../jigs/settings-text.ts';
import type { Jig } from '../jigs/types.ts';
import type { Order } from '../order/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { formatLength } from '../units/format-length.ts';
import { USUAL, includesJig, includesKind, leftOut, type OutputChoice } from './output-choice.ts';
import { OUTPUT_KINDS } from './output-kinds.ts';

/** `read-first.txt`: what is in the folder, how each jig is put together and used, and the usual cautions. */
export function readFirst(
  order: Order,
  plan: OrderPlan,
  machine: MachineProfile,
  choice: OutputChoice = USUAL,
): string {
  const jigs = plan.jigs.filter(({ id }) => includesJig(choice, id));
  const kinds = new Set(jigs.map(({ kind }) => kind));
  const lines = [
    `Jigs for ${order.name}${order.date === undefined ? '' : `, ${order.date}`}`,
    '',
    ...fileLines(choice),
    'manifest.json every file with its size and SHA-256, and what each part sets',
    ...notHere(plan, choice),
    ...sharedLines(plan),
    '',
    'Jigs',
    ...jigs.map((jig) => `  ${jig.id.padEnd(5)}${jig.kind.padEnd(20)}${settingsText(jig, order.unit)}`),
    '',
    ...pinLines(jigs, order),
    ...[...JIG_KINDS, ...AID_KINDS]
      .filter(({ name }) => kinds.has(name))
      .flatMap(({ name, assembly, use }) => [
        `${name[0]?.toUpperCase() ?? ''}${name.slice(1)}`,
        `  1. ${assembly}`,
        `  2. ${use}`,
        '',
      ]),
    ...DRILLING,
    '',
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

/** What goes for every screw and pull, with a guide or without. */
const DRILLING = [
  'Drilling',
  '  1. Pilot holes: from inside the box, with box and front clamped and the depth stop set.',
  '  2. Where the instructions give a clearance in the box front: leave the clamp on and open the holes in the box front only, with that bit and the stop at the thickness of the box front (along the lean where a hole leans). A screw whose thread bites in the box front too holds the front away from it.',
  '  3. A screw that leans and has no guide: set a sliding bevel to its angle, lean the bit by it, and measure the depth along the lean. Try it on scrap first.',
  '  4. Pull holes go right through the front into a scrap board. One that the box front covers is carried on through the box front from the face when the front is fixed, with a scrap behind.',
  '  No screw chosen, no hole: do not drill where the instructions say to stop.',
] as const;

/** What is in the folder besides the manifest and this text. */
function fileLines(choice: OutputChoice): readonly string[] {
  const line = (name: string, words: string): string => `${name.padEnd(14)}${words}`;
  const chosen = OUTPUT_KINDS.filter(({ id }) => includesKind(choice, id));
  const lists = chosen.filter(({ group, id }) => group === 'lists' && id !== 'read-first');
  const formats = chosen.filter(({ group }) => group === 'formats').map(({ id }) => id);
  const printed = chosen.filter(({ group }) => group === 'paper');
  const extras = chosen.filter(({ group }) => group === 'extras');
  return [
    ...lists.map(({ label, purpose }) => line(label, purpose)),
    ...(formats.length === 0
      ? []
      : [line(formats.join(', '), 'one cut file for each part; the unit is in its name')]),
    ...(printed.length === 0
      ? []
      : [line('paper', `to print at 100 %: ${printed.map(({ label }) => label.toLowerCase()).join(', ')}`)]),
    ...extras.map(({ id, purpose }) => line(id, purpose)),
  ];
}

/** The schedule is of the whole order, so it may name jigs that nobody finds here. */
function notHere(plan: OrderPlan, choice: OutputChoice): readonly string[] {
  const { jigs } = leftOut(
    choice,
    plan.jigs.map(({ id }) => id),
  );
  return jigs.length === 0 ? [] : ['', `Not in this folder, by choice: ${jigs.join(', ')}`];
}

/** What is different where drawers share jigs. */
function sharedLines({ sharing, uses }: OrderPlan): readonly string[] {
  if (sharing === undefined) return [];
  const off = uses.filter(({ adjustment }) => adjustment !== 0);
  const most = Math.max(0, ...off.map(({ adjustment }) => Math.abs(adjustment)));
  return [
    '',
    'Drawers share jigs',
    `  Jigs set drawers whose overhangs differ a little; the slides' adjusters put that right. ${off.length} of ${uses.length} settings leave something to adjust, ${Number(most.toFixed(2))} mm at most.`,
    '  adjust_mm in schedule.csv is the overhang wanted less the one that the jig sets. The column adjust says how far the adjusters must move the front for that, and which way. It comes on top of what dialling in takes anyway, as the start-low allowance does; the instruction sheets have both together.',
    '  The rows of schedule.csv are in an order of work in which jigs change hands least.',
    ...(uses.some(({ jig }) => jig.hand !== null)
      ? [
          '  Set each drawer with one hand of corner fence, the one that leaves less to adjust, which the instruction sheets name; the other is no check of a box that a shared one has set.',
        ]
      : []),
  ];
}

/** Pins are bought, so they are in no cut file. */
function pinLines(jigs: readonly Jig[], { unit }: Order): readonly string[] {
  const lines = jigs.flatMap(({ id, pins }) =>
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
