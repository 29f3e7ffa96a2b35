import { mmText } from '../../units/mm-text.ts';
import { cornerPieces } from '../corner-pieces.ts';
import { designLip, type Lip } from '../lip.ts';
import { mirrorJig } from '../mirror-jig.ts';
import { LARGEST_OVERHANG, SMALLEST_BEARING } from '../proportions.ts';
import { bevelSensitivity } from '../sensitivity.ts';
import type { BuildContext, Jig, JigKind, Setup } from '../types.ts';

/** mm. Of each arm, from the front's corner. */
const ARM = { usual: 110, min: 75 } as const;

/** mm. Least stretch of an arm that bears on the box. */
const SHORTEST_ON_BOX = 25;

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
      meaning: "from the front's bottom edge to the box",
      unit: 'mm',
      min: 0.5,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'sideOverhang',
      meaning: "from the front's side edge to the box",
      unit: 'mm',
      min: 0.5,
      max: LARGEST_OVERHANG,
    },
    { name: 'bottomArm', meaning: 'along the bottom edge', unit: 'mm', min: ARM.min, max: ARM.usual },
    { name: 'sideArm', meaning: 'along the side edge', unit: 'mm', min: ARM.min, max: ARM.usual },
  ],
  refuses(setups, context) {
    const { bottom, side } = pair(setups);
    const { thickness } = context.machine.sheet;
    if (bottom === undefined || side === undefined)
      return 'a corner fence needs a bottom and a side overhang';
    if (Math.max(bottom.overhang, side.overhang) < SMALLEST_BEARING) {
      return `one of the two overhangs must be ${mmText(SMALLEST_BEARING)} or more for the fence to rest on`;
    }
    for (const [setup, across] of [
      [bottom, side],
      [side, bottom],
    ] as const) {
      if (setup.overhang < 0.5 || setup.overhang > LARGEST_OVERHANG) {
        return `a ${setup.edge} overhang of ${mmText(setup.overhang)} is outside 0.5 to ${mmText(LARGEST_OVERHANG)}`;
      }
      const arm = armOf(setup);
      if (arm < ARM.min)
        return `a ${setup.edge} edge of ${mmText(setup.edgeLength)} is too short for an arm of ${mmText(ARM.min)}`;
      if (arm - across.overhang < SHORTEST_ON_BOX) {
        return `an arm of ${mmText(arm)} on the ${setup.edge} edge leaves less than ${mmText(SHORTEST_ON_BOX)} on the box past an overhang of ${mmText(across.overhang)}`;
      }
    }
    if (bottom.boxReach < thickness) {
      return `a plate of ${mmText(thickness)} would stand past the ${mmText(bottom.boxReach)} box front that it bears on`;
    }
    const lip = lipOf(bottom, context);
    return typeof lip === 'string' ? lip : null;
  },
  build(id, setups, context) {
    const { bottom, side } = pair(setups);
    if (bottom === undefined || side === undefined) throw new RangeError('corner fence: a set-up is missing');
    const lip = lipOf(bottom, context);
    if (typeof lip === 'string') throw new RangeError(`corner fence: ${lip}`);
    const arms = { x: armOf(bottom), y: armOf(side) };
    const { pieces, seat } = cornerPieces({ id, bottom, side, lip, arms, context });
    const right: Jig = {
      id,
      kind: cornerFence.name,
      hand: 'right',
      parameters: {
        bottomOverhang: bottom.overhang,
        sideOverhang: side.overhang,
        bottomArm: arms.x,
        sideArm: arms.y,
      },
      pieces,
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

const lipOf = (setup: Setup, { machine }: BuildContext): Lip | string =>
  designLip(setup, machine.sheet.thickness, machine.kind === 'router');
