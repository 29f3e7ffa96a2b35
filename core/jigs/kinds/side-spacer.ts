import { hookedStrip } from '../hooked-strip.ts';
import { designLip, type Lip } from '../lip.ts';
import { bevelWords, EDGE_WORDS, overhangText } from '../phrases.ts';
import { LARGEST_OVERHANG, SMALLEST_BEARING } from '../proportions.ts';
import { bevelSensitivity } from '../sensitivity.ts';
import { firstSetup } from '../setups.ts';
import { twoWayBlock } from '../two-way-block.ts';
import type { Edge } from '../../order/types.ts';
import type { BuildContext, JigKind, Setup } from '../types.ts';
import { mmText } from '../../units/mm-text.ts';

/** mm. Short enough to pass a side-mount slide, long enough to stay square. */
const LENGTH = { usual: 130, min: 80, minTwoWay: 120 } as const;

/** mm. Two widths of one block must differ by this much, or the wrong one would be used unnoticed. */
const CLEARLY_DIFFERENT = 3;

const SIDES: readonly Edge[] = ['left', 'right'];

/**
 * Side spacer: a block between the front's side edge and the box. With a lip on either face, its two widths
 * serve two overhangs: turn it over for the other. Not handed: it is used on either side.
 */
export const sideSpacer: JigKind = {
  name: 'side spacer',
  code: 'S',
  registersOn: "the front's side edge",
  parameters: [
    {
      name: 'overhang',
      meaning: "from the front's side edge to the box",
      unit: 'mm',
      min: SMALLEST_BEARING,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'otherOverhang',
      meaning: 'the smaller one that the other face sets; equal to the first when there is only one',
      unit: 'mm',
      min: SMALLEST_BEARING,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'length',
      meaning: 'of the lip along the edge',
      unit: 'mm',
      min: LENGTH.min,
      max: LENGTH.usual,
    },
  ],
  refuses(setups, context) {
    const refusal = setups.map((setup) => refusesOne(setup, context)).find((why) => why !== null);
    if (refusal !== undefined) return refusal;
    const [a, b] = setups;
    if (a === undefined || b === undefined) return null;
    if (Math.abs(a.overhang - b.overhang) < CLEARLY_DIFFERENT) {
      return `two widths of one block must differ by ${mmText(CLEARLY_DIFFERENT)} or more`;
    }
    if (setups.some((setup) => lengthFor(setup) < LENGTH.minTwoWay)) {
      return `a block of two widths needs ${mmText(LENGTH.minTwoWay)} of edge for its labels`;
    }
    return lipOf(a, context).relief === 'rabbet'
      ? 'a lip with a rabbet cannot carry its label: rabbet and text would be on opposite faces'
      : null;
  },
  build(id, setups, context) {
    const [wide, narrow] = setups.toSorted((a, b) => b.overhang - a.overhang);
    const first = firstSetup(setups);
    const length = Math.min(...setups.map(lengthFor));
    const parameters = {
      overhang: wide?.overhang ?? first.overhang,
      otherOverhang: narrow?.overhang ?? first.overhang,
      length,
    };
    const common = { id, kind: sideSpacer.name, hand: null, parameters };
    if (wide === undefined || narrow === undefined) {
      const lip = lipOf(first, context);
      const { pieces, seat } = hookedStrip({
        id,
        length,
        reach: first.overhang - lip.setback,
        lip,
        machine: context.machine,
        title: `${id}  ${overhangText(first.overhang, context)}`,
        phrases: [
          '↑ BOX',
          EDGE_WORDS.side,
          ...bevelWords(first.backBevel),
          ...context.order,
          '↓ LIP BEHIND FRONT',
        ],
      });
      return {
        ...common,
        pieces,
        seats: [{ ...seat, sets: [{ edges: SIDES, overhang: first.overhang, backBevel: first.backBevel }] }],
        sensitivity: bevelSensitivity(first, lip),
      };
    }
    const way = (setup: Setup) => {
      const lip = lipOf(setup, context);
      return {
        reach: setup.overhang - lip.setback,
        lip,
        title: overhangText(setup.overhang, context),
        phrases: ['↑ BOX', `${id} SIDE`, ...bevelWords(setup.backBevel)],
        sets: [{ edges: SIDES, overhang: setup.overhang, backBevel: setup.backBevel }],
      };
    };
    const { pieces, seats } = twoWayBlock({
      id,
      length,
      machine: context.machine,
      plateLabel: [`${id} PLATE`, ...context.order],
      wide: way(wide),
      narrow: way(narrow),
    });
    return { ...common, pieces, seats, sensitivity: bevelSensitivity(wide, lipOf(wide, context)) };
  },
};

function refusesOne(setup: Setup, { machine }: BuildContext): string | null {
  if (setup.edge !== 'left' && setup.edge !== 'right')
    return `a side spacer is not for the ${setup.edge} edge`;
  if (setup.overhang < SMALLEST_BEARING) {
    return `an overhang of ${mmText(setup.overhang)} is too narrow for a block to rest on (${mmText(SMALLEST_BEARING)} at least)`;
  }
  if (setup.overhang > LARGEST_OVERHANG) {
    return `an overhang of ${mmText(setup.overhang)} is past the ${mmText(LARGEST_OVERHANG)} of the widest block`;
  }
  if (lengthFor(setup) < LENGTH.min) {
    return `an edge of ${mmText(setup.edgeLength)} is too short for a block of ${mmText(LENGTH.min)}`;
  }
  const lip = designLip(setup, machine.sheet.thickness, machine.kind === 'router');
  return typeof lip === 'string' ? lip : null;
}

function lipOf(setup: Setup, { machine }: BuildContext): Lip {
  const lip = designLip(setup, machine.sheet.thickness, machine.kind === 'router');
  if (typeof lip === 'string') throw new RangeError(`side spacer: ${lip}`);
  return lip;
}

const lengthFor = (setup: Setup): number => Math.min(LENGTH.usual, Math.floor(setup.edgeLength - 6));
