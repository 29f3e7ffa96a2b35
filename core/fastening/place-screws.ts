import type { StockScrew } from '../rules/fastening-types.ts';
import type { DrawerContext } from './drawer-context.ts';
import { tightestMargin } from './margins.ts';
import { waysOf } from './place-problem.ts';
import type { PlaceSpec } from './place-spec.ts';
import { columnSpecs, cornerSpecs, rowSpecs } from './places.ts';
import type { Settled } from './places.ts';
import { screwPlace } from './screw-place.ts';
import type { Solver } from './solver.ts';
import type { SolvedPlace } from './solve-place.ts';
import type { Corner, Margin, ScrewPlace } from './types.ts';

/** One screw of the stock, put in all places of a drawer. */
export interface PlacedScrews {
  readonly screw: StockScrew;
  readonly places: readonly ScrewPlace[];
  /** Places that no limit allows: the first corner, or, with all corners there, those between them. */
  readonly failed: readonly PlaceSpec[];
  /** N, after the safety factor. */
  readonly capacity: number;
  readonly tightest: Margin | null;
}

/** Puts a screw in the corners of a drawer's box, and then between them; no further than a corner that fails. */
export function placeScrews(
  context: DrawerContext,
  screw: StockScrew,
  solve: Solver,
  lean: 'straight' | 'any',
): PlacedScrews {
  const places: { readonly spec: PlaceSpec; readonly solved: SolvedPlace }[] = [];
  const failed: PlaceSpec[] = [];
  const put = (spec: PlaceSpec): Settled | null => {
    const solved = solve(context, screw, spec, lean === 'straight' ? [] : waysOf(spec));
    if (solved === null) failed.push(spec);
    else places.push({ spec, solved });
    return solved === null ? null : { spec, entry: solved.entry };
  };
  const corners: Settled[] = [];
  for (const spec of cornerSpecs(context, screw)) {
    const settled = put(spec);
    if (settled === null) break;
    corners.push(settled);
  }
  if (failed.length === 0) specsBetween(context, corners).forEach(put);
  const asked = context.standard.fastening.pull.value / Math.max(1, places.length);
  const done = places.map(({ spec, solved }) => screwPlace(context, screw, spec, solved, asked));
  return {
    screw,
    places: done.map(({ place }) => place),
    failed,
    capacity: done.reduce((sum, { holds }) => sum + holds, 0),
    tightest: tightestMargin(done.flatMap(({ place }) => place.margins)),
  };
}

/** The places along the rows and up the sides, between corners that are settled. */
function specsBetween(context: DrawerContext, corners: readonly Settled[]): readonly PlaceSpec[] {
  const at = (hand: Corner['hand'], end: Corner['end']) =>
    corners.find(({ spec: { corner } }) => corner.hand === hand && corner.end === end);
  const rows = (['bottom', 'top'] as const).flatMap((end) => {
    const [right, left] = [at('right', end), at('left', end)];
    return right === undefined || left === undefined ? [] : rowSpecs(context, right, left);
  });
  const columns = (['right', 'left'] as const).flatMap((hand) => {
    const [bottom, top] = [at(hand, 'bottom'), at(hand, 'top')];
    return bottom === undefined || top === undefined ? [] : columnSpecs(context, bottom, top);
  });
  return [...rows, ...columns];
}
