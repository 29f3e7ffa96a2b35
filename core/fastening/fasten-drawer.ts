import type { Outcome } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { chooseScrew } from './choose-screw.ts';
import { drawerContext } from './drawer-context.ts';
import type { DrawerContext } from './drawer-context.ts';
import { explainAll, nearestScrew } from './explain-failure.ts';
import { holesFor } from './holes.ts';
import { memoSolver } from './solver.ts';
import type { Solver } from './solver.ts';
import { fasteningFindings } from './fastening-findings.ts';
import type { Fastening } from './types.ts';

/**
 * How one drawer's front is screwed on: the screw of the stock that suits it best, where its screws go and how
 * they lean, the holes, and what they hold; or the nearest miss and what would cure it.
 */
export function fastenDrawer(
  fit: DrawerFit,
  standard: ShopStandard,
  solve: Solver = memoSolver(),
): Outcome<Fastening> {
  const value = fasten(drawerContext(fit, standard), solve);
  return { value, findings: fasteningFindings(value, standard) };
}

function fasten(context: DrawerContext, solve: Solver): Fastening {
  const { fit, standard, pullHoles } = context;
  const pull = standard.fastening.pull.value;
  const best = chooseScrew(context, solve);
  if (best === null) {
    return {
      fit,
      screw: null,
      places: [],
      impossible: nearestScrew(context),
      holes: null,
      withdrawal: { capacity: 0, pull },
      pullHoles,
      tightest: null,
    };
  }
  return {
    fit,
    screw: best.screw,
    places: best.places,
    impossible: explainAll(context, best.screw, best.failed, best.places.length),
    holes: holesFor(context, best.screw, best.places),
    withdrawal: { capacity: best.capacity, pull },
    pullHoles,
    tightest: best.tightest,
  };
}
