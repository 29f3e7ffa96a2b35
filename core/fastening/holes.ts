import type { StockScrew } from '../rules/fastening-types.ts';
import { formatLength } from '../units/format-length.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { clearanceBit, pilotBit, pilotTarget } from './bits.ts';
import type { DrawerContext } from './drawer-context.ts';
import type { Holes, ScrewPlace } from './types.ts';

/**
 * The holes for a drawer's screws, all of one sort. A screw whose thread reaches out of the front into a pilot
 * in the box front would keep the two apart however hard it is turned, so that box front gets a clearance hole
 * whatever the standard says.
 */
export function holesFor(context: DrawerContext, screw: StockScrew, places: readonly ScrewPlace[]): Holes {
  const { fit, standard, species } = context;
  const { bits, holes } = standard.fastening;
  const length = (mm: number) => formatLength(mm, fit.unit);
  const shallowest = Math.min(...places.map((place) => place.pilotDepth));
  const target = pilotTarget(screw, species);
  const pilot = pilotBit(target, bits);
  const clear = clearanceBit(screw, bits);
  const threadOut = screw.thread.value > shallowest + SAME_LENGTH;
  const slips = holes.value === 'clearance in the box front' || threadOut;
  const sentences = [
    `The pilot is ${species.softwood ? '70 % of the root in softwood' : '90 % of the root in hardwood'} or the next smaller bit.`,
    ...(pilot > target + SAME_LENGTH
      ? [`No bit is as small as ${length(target)}, so the smallest one is taken and the thread holds less.`]
      : []),
    ...(species.specificGravity.value < 0.5
      ? ['Wood as light as this needs none by the design specification; the hole still guides the screw.']
      : []),
    ...(holes.value === 'pilot through both' && threadOut
      ? [
          'The standard asks for a pilot through both, but the thread would reach into the box front and hold the joint open: drill the box front out.',
        ]
      : []),
    ...(slips && clear === null
      ? [`No bit is as large as the thread: use one of ${length(screw.diameter.value)} or more.`]
      : []),
  ];
  return {
    plan: slips ? 'clearance in the box front' : 'pilot through both',
    why: sentences.join(' '),
    pilotDiameter: pilot,
    pilotTarget: target,
    pilotDepth: screw.length.value - fit.boxFront,
    clearanceDiameter: slips ? (clear ?? screw.diameter.value) : 0,
  };
}
