import { mmText } from '../../units/mm-text.ts';
import { cornerPieces } from '../corner-pieces.ts';
import { outsideLimits } from '../limits.ts';
import { mirrorJig } from '../mirror-jig.ts';
import { LARGEST_OVERHANG, SMALLEST_BEARING } from '../proportions.ts';
import { bevelSensitivity } from '../sensitivity.ts';
import { lipFor, lipRefusal } from '../single-lip.ts';
import type { Jig, JigKind, Setup } from '../types.ts';

/** mm. Of each arm, from the front's corner; common practice, no source. */
const ARM = { usual: 110, min: 75 } as const;

/** mm. Least stretch of an arm that bears on the box; common practice, no source. */
const SHORTEST_ON_BOX = 25;

/** mm. Less of a plate between lip and box would break; common practice, no source. */
const SMALLEST_OVERHANG = 0.5;

const overhangLimits = { unit: 'mm', min: SMALLEST_OVERHANG, max: LARGEST_OVERHANG } as const;

const armLimits = { unit: 'mm', min: ARM.min, max: ARM.usual } as const;

/**
 * Corner fence: an L on the back of the front at one of its lower corners, with lips behind both edges; the
 * box is pushed into its inside corner. Sets the bottom and the side overhang at once. Handed.
 *
 *      cabinet right        seen on the back of the front, as drawn
 *     |  |   box
 *     |  |________
 *     |___________|  <- arm on the bottom edge
 */
export const cornerFence: JigKind = {
  name: 'corner fence',
  code: 'C',
  registersOn: "the front's bottom and side edge at one corner",
  parameters: [
    {
      name: 'bottomOverhang',
      words: 'a bottom overhang',
      meaning: "from the front's bottom edge to the box",
      ...overhangLimits,
    },
    {
      name: 'sideOverhang',
      words: 'a side overhang',
      meaning: "from the front's side edge to the box",
      ...overhangLimits,
    },
    { name: 'bottomArm', words: 'an arm on the bottom edge', meaning: 'its length', ...armLimits },
    { name: 'sideArm', words: 'an arm on the side edge', meaning: 'its length', ...armLimits },
  ],
  assembly:
    'Stack the plate, engraved face up, on the dust layer if there is one, and both on the lip layers; pins or keys go in one way only. Left and right are a pair; the arrow points to the cabinet’s left.',
  use: 'Hook both lips over the lower corner that the label names, press them flat to the edges, and push the box into the inside corner. One hand of a pair sets the box; the other checks it.',
  refuses(setups, context) {
    const { bottom, side } = pair(setups);
    if (bottom === undefined || side === undefined)
      return 'a corner fence needs a bottom and a side overhang';
    const outside = outsideLimits(cornerFence.parameters, parametersOf(bottom, side));
    if (outside !== null) return outside;
    if (Math.max(bottom.overhang, side.overhang) < SMALLEST_BEARING) {
      return `one of the two overhangs must be ${mmText(SMALLEST_BEARING)} or more for the fence to rest on`;
    }
    for (const [setup, across] of [
      [bottom, side],
      [side, bottom],
    ] as const) {
      const onBox = Math.min(armOf(setup) - across.overhang, setup.boxLength, setup.clearLength);
      if (onBox < SHORTEST_ON_BOX) {
        return `on the ${setup.edge} edge the arm would bear on ${mmText(onBox)} of the box only; it needs ${mmText(SHORTEST_ON_BOX)}`;
      }
    }
    const { thickness } = context.machine.sheet;
    if (bottom.boxReach < thickness) {
      return `a plate of ${mmText(thickness)} would stand past the ${mmText(bottom.boxReach)} box front that it bears on`;
    }
    return lipRefusal(bottom, context);
  },
  build(id, setups, context) {
    const { bottom, side } = pair(setups);
    if (bottom === undefined || side === undefined) throw new RangeError('corner fence: a set-up is missing');
    const parameters = parametersOf(bottom, side);
    const lip = lipFor(bottom, context);
    const arms = { x: parameters.bottomArm, y: parameters.sideArm };
    const { pieces, seat, pins } = cornerPieces({ id, bottom, side, lip, arms, context });
    const right: Jig = {
      id,
      kind: cornerFence.name,
      hand: 'right',
      parameters,
      pieces,
      pins,
      seats: [seat],
      sensitivity: bevelSensitivity(bottom, lip),
    };
    // In the back view the cabinet's right corner is the one at the origin; the left one is its mirror image.
    return side.edge === 'right' ? right : mirrorJig(right);
  },
};

const pair = (setups: readonly Setup[]) => ({
  bottom: setups.find(({ edge }) => edge === 'bottom'),
  side: setups.find(({ edge }) => edge === 'left' || edge === 'right'),
});

const armOf = (setup: Setup): number => Math.min(ARM.usual, Math.floor(setup.edgeLength * 0.9));

const parametersOf = (bottom: Setup, side: Setup) => ({
  bottomOverhang: bottom.overhang,
  sideOverhang: side.overhang,
  bottomArm: armOf(bottom),
  sideArm: armOf(side),
});
