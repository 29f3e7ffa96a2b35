import type { StockScrew } from '../rules/fastening-types.ts';
import { cornerFrame, outOfFrame } from './corner-frame.ts';
import type { DrawerContext } from './drawer-context.ts';
import type { PlaceSpec } from './place-spec.ts';
import { degreesOf, leanOf, tangentOf } from './slope.ts';
import type { SolvedPlace } from './solve-place.ts';
import type { Margin, ScrewPlace } from './types.ts';
import { threadInFront, withdrawalLoad } from './withdrawal.ts';
import { woodAt } from './woods.ts';

/** A solved place in the back view, and what its screw holds in N after the safety factor. */
export function screwPlace(
  { walls, species, standard }: DrawerContext,
  screw: StockScrew,
  spec: PlaceSpec,
  { entry, slope, smallest, margins, active, member }: SolvedPlace,
  asked: number,
): { readonly place: ScrewPlace; readonly holds: number } {
  const frame = cornerFrame(walls, spec.corner);
  const tangent = tangentOf(slope);
  const secant = Math.sqrt(1 + tangent * tangent);
  const pilotDepth = screw.length.value - walls.front * secant;
  // A leaning screw holds the front with the part of its pull that is square to the front.
  const load = withdrawalLoad({
    specificGravity: species.specificGravity.value,
    diameter: screw.diameter.value,
    length: threadInFront(pilotDepth, screw.thread.value),
  });
  const holds = load / secant / standard.fastening.safety.value;
  const withdrawal: Margin = {
    limit: 'withdrawal',
    over: holds - asked,
    is: holds,
    least: asked,
    against: "this screw's share of the pull",
  };
  const place: ScrewPlace = {
    corner: spec.corner,
    index: spec.index,
    along: spec.along,
    entry: outOfFrame(frame, entry),
    fromSide: entry.x,
    fromEnd: entry.y,
    lean: leanOf(slope),
    angle: degreesOf(tangent),
    smallestAngle: degreesOf(tangentOf(smallest)),
    direction: {
      x: (-frame.along.x * slope.side) / secant || 0,
      y: (-frame.along.y * slope.rail) / secant || 0,
      z: -1 / secant,
    },
    wood: woodAt(member, spec.corner),
    pilotDepth,
    margins: [...margins, withdrawal],
    active,
  };
  return { place, holds };
}
