import { mmText } from '../../units/mm-text.ts';
import { outsideLimits } from '../limits.ts';
import { LARGEST_OVERHANG, SMALLEST_BEARING } from '../proportions.ts';
import { onlySetup } from '../setups.ts';
import { lipRefusal, singleLipJig } from '../single-lip.ts';
import type { JigKind, Setup } from '../types.ts';

/** mm. Long enough to square a box against, short enough for one hand; common practice, no source. */
const LENGTH = { usual: 180, min: 110 } as const;

/**
 * Bottom fence: a strip on the back of the front with a lip behind its bottom edge; the box is pushed
 * against it. Sets the bottom overhang.
 */
export const bottomFence: JigKind = {
  name: 'bottom fence',
  code: 'B',
  registersOn: "the front's bottom edge",
  parameters: [
    {
      name: 'overhang',
      words: 'a bottom overhang',
      meaning: "from the front's bottom edge to the box; below the least a plate would tip",
      unit: 'mm',
      min: SMALLEST_BEARING,
      max: LARGEST_OVERHANG,
    },
    {
      name: 'length',
      words: 'a fence',
      meaning: 'of the lip along the edge, which must be longer',
      unit: 'mm',
      min: LENGTH.min,
      max: LENGTH.usual,
    },
  ],
  assembly:
    'Stack the plate, engraved face up, on the dust layer if there is one, and both on the lip layers. Pins or keys go in one way only. Glue, and keep glue off the working edges.',
  use: 'Lay the front face down. Hook the lip behind the bottom edge, press it flat to the edge, and push the bottom of the box against the plate.',
  refuses(setups, context) {
    const setup = onlySetup(setups);
    const { thickness } = context.machine.sheet;
    if (setup.edge !== 'bottom') return `a bottom fence is not for the ${setup.edge} edge`;
    if (setup.boxReach < thickness) {
      return `a plate of ${mmText(thickness)} would stand past the ${mmText(setup.boxReach)} box front that it bears on`;
    }
    return outsideLimits(bottomFence.parameters, parametersOf(setup)) ?? lipRefusal(setup, context);
  },
  build(id, setups, context) {
    const setup = onlySetup(setups);
    const parameters = parametersOf(setup);
    return singleLipJig(
      { id, kind: bottomFence.name, setup, length: parameters.length, parameters, edges: ['bottom'] },
      context,
    );
  },
};

const parametersOf = ({ overhang, edgeLength }: Setup) => ({
  overhang,
  length: Math.min(LENGTH.usual, Math.floor(edgeLength - 10)),
});
