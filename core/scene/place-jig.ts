import type { DrawerFit } from '../fit/types.ts';
import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Jig, Pose } from '../jigs/types.ts';
import { compose } from '../jigs/vec3.ts';
import type { Rect } from './box-place.ts';
import type { ChosenSeat } from './choose-seat.ts';
import { solidPoints } from './solid-points.ts';
import type { Solid } from './types.ts';
import { add, dot, scale } from './vec.ts';

/**
 * The frame of a seat in the back view. A jig on one edge is slid along it to the middle of the box, as far as
 * the ends of the edge allow; a corner fence has its place.
 *
 * @param solids of the jig, in the seat's frame
 */
export function seatFrame(
  jig: Jig,
  { seat, sets }: ChosenSeat,
  fit: DrawerFit,
  box: Rect,
  solids: readonly Solid[],
): Pose {
  if (seat.frame === 'corner') {
    const x = jig.hand === 'left' ? fit.frontW : 0;
    return { origin: { x, y: 0, z: 0 }, u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 } };
  }
  const [{ edge }] = sets;
  const frame = edgeFrame(edge, fit.frontW, fit.frontH);
  const along = solids.flatMap(solidPoints).map(({ x }) => x);
  const half = (edge === 'bottom' || edge === 'top' ? fit.frontW : fit.frontH) / 2;
  const [least, most] = [-half - Math.min(...along), half - Math.max(...along)];
  const middle = { x: box.x + box.w / 2 - frame.origin.x, y: box.y + box.h / 2 - frame.origin.y, z: 0 };
  const wanted = dot(middle, frame.u);
  const slide = least > most ? (least + most) / 2 : Math.min(most, Math.max(least, wanted));
  return { ...frame, origin: add(frame.origin, scale(frame.u, slide)) };
}

/** The solids of a jig, from the seat's frame to the back view. */
export const placed = (solids: readonly Solid[], frame: Pose): readonly Solid[] =>
  solids.map((solid) => ({
    ...solid,
    pose: compose(frame, solid.pose),
    apart: compose({ ...frame, origin: { x: 0, y: 0, z: 0 } }, { ...frame, origin: solid.apart }).origin,
  }));
