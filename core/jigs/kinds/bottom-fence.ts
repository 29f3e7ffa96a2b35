import { hookedStrip } from '../hooked-strip.ts';
import { bevelSensitivity } from '../sensitivity.ts';
import { designLip } from '../lip.ts';
import { bevelWords, EDGE_WORDS, overhangText } from '../phrases.ts';
import { LARGEST_OVERHANG, SMALLEST_BEARING } from '../proportions.ts';
import type { JigKind, Setup } from '../types.ts';
import { onlySetup } from '../setups.ts';
import { mmText } from '../../units/mm-text.ts';

/** mm. Long enough to square a box against, short enough for one hand. */
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
      meaning: "from the front's bottom edge to the box",
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
  refuses(setups, { machine }) {
    const setup = onlySetup(setups);
    if (setup.edge !== 'bottom') return `a bottom fence is not for the ${setup.edge} edge`;
    if (setup.overhang < SMALLEST_BEARING) {
      return `an overhang of ${mmText(setup.overhang)} is too narrow for a plate to rest on (${mmText(SMALLEST_BEARING)} at least)`;
    }
    if (setup.overhang > LARGEST_OVERHANG) {
      return `an overhang of ${mmText(setup.overhang)} is past the ${mmText(LARGEST_OVERHANG)} of the widest fence`;
    }
    if (lengthFor(setup) < LENGTH.min) {
      return `an edge of ${mmText(setup.edgeLength)} is too short for a fence of ${mmText(LENGTH.min)}`;
    }
    if (setup.boxReach < machine.sheet.thickness) {
      return `a plate of ${mmText(machine.sheet.thickness)} would stand past the ${mmText(setup.boxReach)} box front that it bears on`;
    }
    const lip = designLip(setup, machine.sheet.thickness, machine.kind === 'router');
    return typeof lip === 'string' ? lip : null;
  },
  build(id, setups, context) {
    const setup = onlySetup(setups);
    const { machine } = context;
    const lip = designLip(setup, machine.sheet.thickness, machine.kind === 'router');
    if (typeof lip === 'string') throw new RangeError(`bottom fence: ${lip}`);
    const length = lengthFor(setup);
    const { pieces, seat } = hookedStrip({
      id,
      length,
      reach: setup.overhang - lip.setback,
      lip,
      machine,
      title: `${id}  ${overhangText(setup.overhang, context)}`,
      phrases: [
        '↑ BOX',
        EDGE_WORDS.bottom,
        ...bevelWords(setup.backBevel),
        ...context.order,
        '↓ LIP BEHIND FRONT',
      ],
    });
    return {
      id,
      kind: bottomFence.name,
      hand: null,
      parameters: { overhang: setup.overhang, length },
      pieces,
      seats: [
        { ...seat, sets: [{ edges: ['bottom'], overhang: setup.overhang, backBevel: setup.backBevel }] },
      ],
      sensitivity: bevelSensitivity(setup, lip),
    };
  },
};

const lengthFor = (setup: Setup): number => Math.min(LENGTH.usual, Math.floor(setup.edgeLength - 10));
