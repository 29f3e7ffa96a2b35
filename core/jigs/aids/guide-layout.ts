import type { Point } from '../../geometry/types.ts';
import type { MachineProfile } from '../../machine/profile.ts';
import { mmText } from '../../units/mm-text.ts';
import { jointPlaces, type JointPlaces } from '../joint.ts';
import { DUST_RELIEF, LIP_MIDDLE, LIP_WIDTH } from '../proportions.ts';
import { reachOf } from './bore-stack.ts';
import type { GuideSetup } from './types.ts';

// All in mm; common practice, no source.

/** No guide is longer or shorter; a longer one would bend, and be clumsy in a box. */
export const GUIDE_LENGTH = { least: 100, most: 400 } as const;

/** Wood round a bore, and between the guide and the far side of the box. */
export const WALL = 3;
const FAR_SIDE = 1;

/** Least wood between a bore and a face of the lowest layer, which stands back from what the guide registers on. */
const THIN_WALL = 1.2;

/** Least height of the band with the bores, so that the guide stands square to the side. */
const BAND = 28;

/** Length along the guide for its labels. */
const LABELS = { usual: 112, least: 66 } as const;

/** Wood beyond the joints' slots or pins, and how far their places alternate. */
const JOINT_WALL = 4;
const JOINT_OFFSET = 1.2;

/** Where things are on a guide, from the corner that it registers in; mm. */
export interface GuideLayout {
  readonly length: number;
  /** From the end face to the upper edge of the band with the bores and the labels. */
  readonly band: number;
  /** y of the guide's two long edges. */
  readonly low: number;
  readonly high: number;
  readonly jointY: number;
  readonly joints: JointPlaces;
  /** Clear of bores through all layers. */
  readonly labels: { readonly from: number; readonly to: number };
}

/** Lays a guide out, or says why it has no room. */
export function guideLayout(
  setup: GuideSetup,
  height: number,
  machine: MachineProfile,
): GuideLayout | string {
  const { places, bore, room, end } = setup;
  const reaches = places.map((place) => reachOf(place, bore, height));
  const nearest = Math.min(...reaches.flatMap(({ min }) => [min.x, min.y]));
  if (nearest < DUST_RELIEF + THIN_WALL) {
    return `a bore comes within ${mmText(nearest)} of a face that the guide registers on; it needs ${mmText(DUST_RELIEF + THIN_WALL)} of wood`;
  }
  const longest = Math.min(GUIDE_LENGTH.most, room.x - FAR_SIDE);
  const needed = Math.max(...reaches.map(({ max }) => max.x)) + WALL;
  if (needed > longest) {
    return `its bores reach ${mmText(needed)} from the side, and a guide can be ${mmText(longest)} long there`;
  }
  const stretches = reaches.map(({ min, max }): Stretch => ({ from: min.x - WALL, to: max.x + WALL }));
  const last = Math.max(...stretches.map(({ to }) => to));
  const shortest = Math.max(GUIDE_LENGTH.least, needed);
  const within = clearStretch(stretches, shortest);
  const length =
    size(within) >= LABELS.usual
      ? shortest
      : Math.min(longest, Math.ceil(Math.max(shortest, last + LABELS.usual + WALL)));
  const labels = clearStretch(stretches, length);
  if (length < GUIDE_LENGTH.least || size(labels) < LABELS.least) {
    return `a box ${mmText(room.x)} wide inside leaves no room for the guide's joints and labels`;
  }
  const least = Math.max(...reaches.map(({ max }) => max.y)) + WALL;
  const band = Math.max(least, end === 'top' ? Math.min(BAND, room.y - FAR_SIDE) : BAND);
  if (end === 'top' && band > room.y - FAR_SIDE) {
    return `a guide at the top edge needs ${mmText(band + FAR_SIDE)} down to the bottom of the box, and there are ${mmText(room.y)}`;
  }
  const across = machine.joint === 'pin' ? machine.pinDiameter : machine.sheet.thickness;
  const strip = across + 2 * (JOINT_WALL + JOINT_OFFSET);
  const jointY = end === 'top' ? LIP_MIDDLE : band + strip / 2;
  const joints = jointPlaces(length, jointY);
  const [a, b, c] = joints;
  const moved = ({ x, y }: Point): Point => ({ x: x + length / 2, y });
  return {
    length,
    band,
    low: end === 'top' ? -LIP_WIDTH : 0,
    high: end === 'top' ? band : band + strip,
    jointY,
    joints: [moved(a), moved(b), moved(c)],
    labels,
  };
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

const size = ({ from, to }: Stretch): number => to - from;

/** The longest stretch of a guide's length that no bore takes, clear of its ends. */
function clearStretch(taken: readonly Stretch[], length: number): Stretch {
  let best: Stretch = { from: 0, to: 0 };
  let from: number = WALL;
  const end = length - WALL;
  for (const next of [...taken.toSorted((a, b) => a.from - b.from), { from: end, to: end }]) {
    const open = { from, to: Math.min(next.from, end) };
    if (size(open) > size(best)) best = open;
    from = Math.max(from, next.to);
  }
  return best;
}
