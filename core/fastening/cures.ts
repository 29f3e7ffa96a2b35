import type { StockScrew } from '../rules/fastening-types.ts';
import { formatLength } from '../units/format-length.ts';
import { changesOf } from './changes.ts';
import type { Change } from './changes.ts';
import { drawerContext } from './drawer-context.ts';
import type { DrawerContext } from './drawer-context.ts';
import { isPossible } from './is-possible.ts';
import { leansAllow } from './leans-allow.ts';
import { placeProblem } from './place-problem.ts';
import type { PlaceSpec } from './place-spec.ts';
import { cornerSpecs } from './places.ts';

/**
 * What would make an impossible place possible: each cure is one change alone, found by solving the place again
 * with it, and as small as the shop's steps allow. Whole sentences. It is for this place: others may need more.
 */
export function curesFor(context: DrawerContext, screw: StockScrew, spec: PlaceSpec): readonly string[] {
  const works = (change: Change, steps: number): boolean => {
    const changed = change.make(steps);
    if (changed === null) return false;
    const next = drawerContext(changed.fit, changed.standard, changed.guideThickness);
    if (!leansAllow(next, changed.screw, 'any')) return false;
    const there = sameSpec(next, changed.screw, spec);
    return there !== undefined && isPossible(placeProblem(next, changed.screw, there));
  };
  const length = (mm: number) => formatLength(mm, context.fit.unit);
  return changesOf(context, screw).flatMap((change) => {
    const steps = fewestSteps(change, (count) => works(change, count));
    return steps === null ? [] : [change.say(steps, length)];
  });
}

/** The place of the same corner in a changed drawer; one between corners stays where it was. */
const sameSpec = (context: DrawerContext, screw: StockScrew, spec: PlaceSpec): PlaceSpec | undefined =>
  spec.index > 0
    ? spec
    : cornerSpecs(context, screw).find(
        ({ corner }) => corner.hand === spec.corner.hand && corner.end === spec.corner.end,
      );

/**
 * The least count from 1 that works, where more of a change is never worse than less: then the most of it is
 * tried first. Where more may do harm again, each is tried.
 */
function fewestSteps({ most, monotone }: Change, works: (count: number) => boolean): number | null {
  if (!monotone) {
    for (let count = 1; count <= most; count += 1) if (works(count)) return count;
    return null;
  }
  if (most < 1 || !works(most)) return null;
  let [fails, holds] = [0, most];
  while (holds - fails > 1) {
    const middle = Math.floor((fails + holds) / 2);
    if (works(middle)) holds = middle;
    else fails = middle;
  }
  return holds;
}
