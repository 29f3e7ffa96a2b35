import type { Edge } from '../../order/types.ts';
import { mmText } from '../../units/mm-text.ts';
import { outsideLimits } from '../limits.ts';
import { bevelWords, overhangText } from '../phrases.ts';
import { LARGEST_OVERHANG, SIGHT, SMALLEST_BEARING } from '../proportions.ts';
import { bevelSensitivity } from '../sensitivity.ts';
import { firstSetup } from '../setups.ts';
import { lipFor, lipRefusal, singleLipJig } from '../single-lip.ts';
import { twoWayBlock } from '../two-way-block.ts';
import type { BuildContext, JigKind, Setup } from '../types.ts';

/** mm. Long enough to stay square, short enough for one hand; common practice, no source. */
const LENGTH = { usual: 130, min: 80, minTwoWay: 120 } as const;

/** mm. Less would make the wrong width of a block go unnoticed; common practice, no source. */
export const CLEARLY_DIFFERENT = 3;

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
      words: 'a side overhang',
      meaning: "from the front's side edge to the box; below the least a plate would tip",
      unit: 'mm',
      min: SMALLEST_BEARING,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'otherOverhang',
      words: 'a side overhang',
      meaning: 'the smaller one that the other face sets; equal to the first when there is only one',
      unit: 'mm',
      min: SMALLEST_BEARING,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'length',
      words: 'a block',
      meaning: 'of the lip along the edge, which must be longer; its plate passes a slide on the box side',
      unit: 'mm',
      min: LENGTH.min,
      max: LENGTH.usual,
    },
  ],
  assembly:
    'Stack plate, dust layer if there is one, and lip layers; pins or keys go in one way only. A block of two widths has a lip on either face, engraved faces outwards: the lip that shows the larger overhang lies on the engraved face of the plate, the other under it.',
  use: 'Hook the lip behind the side edge that the schedule names, press it flat to the edge, and push the side of the box against the plate, clear of any slide. A block of two widths sets what the label on top says; turn it over for the other.',
  refuses(setups, context) {
    for (const setup of setups) {
      if (!SIDES.includes(setup.edge)) return `a side spacer is not for the ${setup.edge} edge`;
    }
    const refusal = setups.map((setup) => lipRefusal(setup, context)).find((why) => why !== null);
    const outside = outsideLimits(sideSpacer.parameters, parametersOf(setups)) ?? refusal ?? null;
    return outside ?? refusesTwo(setups, context);
  },
  build(id, setups, context) {
    const parameters = parametersOf(setups);
    const [wide, narrow] = setups.toSorted((a, b) => b.overhang - a.overhang);
    const common = { id, kind: sideSpacer.name, parameters, length: parameters.length };
    if (wide === undefined || narrow === undefined) {
      return singleLipJig({ ...common, setup: firstSetup(setups), edges: SIDES }, context);
    }
    const way = (setup: Setup) => {
      const lip = lipFor(setup, context);
      const { overhang, backBevel, frontThickness } = setup;
      return {
        reach: overhang - lip.setback,
        lip,
        overhang: overhangText(overhang, context),
        notes: bevelWords(setup, context),
        sets: [{ edges: SIDES, overhang, backBevel, frontThickness }],
      };
    };
    const block = twoWayBlock({
      id,
      length: parameters.length,
      boxLength: Math.min(wide.boxLength, narrow.boxLength),
      machine: context.machine,
      order: context.order,
      wide: way(wide),
      narrow: way(narrow),
    });
    const sensitivity = bevelSensitivity(wide, lipFor(wide, context));
    return { id, kind: sideSpacer.name, hand: null, parameters, ...block, sensitivity };
  },
};

/** A slide on the box side leaves so much of it; the plate is shorter than the lip by the sight at both ends. */
const lengthFor = ({ edgeLength, clearLength }: Setup): number =>
  Math.floor(Math.min(LENGTH.usual, edgeLength - 6, clearLength + 2 * SIGHT));

const parametersOf = (setups: readonly Setup[]) => ({
  overhang: Math.max(...setups.map(({ overhang }) => overhang)),
  otherOverhang: Math.min(...setups.map(({ overhang }) => overhang)),
  length: Math.min(...setups.map(lengthFor)),
});

function refusesTwo(setups: readonly Setup[], context: BuildContext): string | null {
  const [a, b] = setups;
  if (a === undefined || b === undefined) return null;
  if (Math.abs(a.overhang - b.overhang) < CLEARLY_DIFFERENT) {
    return `two widths of one block must differ by ${mmText(CLEARLY_DIFFERENT)} or more`;
  }
  if (parametersOf(setups).length < LENGTH.minTwoWay) {
    return `a block of two widths needs ${mmText(LENGTH.minTwoWay)} of edge for its labels`;
  }
  return lipFor(a, context).relief === 'rabbet'
    ? 'a lip with a rabbet cannot carry its label: rabbet and text would be on opposite faces'
    : null;
}
