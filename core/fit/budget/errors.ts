import type { Edge } from '../../order/types.ts';
import type { ShopStandard, Tolerance, ToleranceSource } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import { gapGrowth, type GapPlace, type Move } from './places.ts';
import type { RegisteredSide } from './start-move.ts';

/** One thing that can be off by its tolerance, and what 1 mm of it does. */
export interface ErrorTerm {
  readonly source: ToleranceSource;
  /** What is off, in words: `opening width`. */
  readonly what: string;
  readonly tolerance: Tolerance;
  /** How it moves the front. The adjusters can undo this part. */
  readonly moves: Move;
  /** How much it opens the gap of an edge otherwise; + wider. No adjuster can undo the sum of opposite edges. */
  readonly opens: Readonly<Partial<Record<Edge, number>>>;
  /** How far the opening's sides lean to the right, over its whole height. */
  readonly leans: number;
}

const STILL: Move = { side: 0, heightLeft: 0, heightRight: 0 };

/**
 * All that can be off, each of it independently, and its effect for each mm. Fronts are registered on the
 * lower corner at one side (`registered`); signs are for the left one, the right one is its mirror image.
 *
 * | source  | what                  | left gap | right gap | bottom gap | top gap |
 * |---------|-----------------------|----------|-----------|------------|---------|
 * | opening | width (box centred)   | 1/2      | 1/2       |            |         |
 * |         | height (box on floor) |          |           |            | 1       |
 * |         | out of square         | -+1/2 at top and bottom | +-1/2    |            |         |
 * | box     | width                 | -1/2     | 1/2       |            |         |
 * | front   | width                 |          | -1        |            |         |
 * |         | height                |          |           |            | -1      |
 * | jig     | side overhang         | -1       | 1         |            |         |
 * |         | bottom overhang       |          |           | -1         | 1       |
 * | seating | at the side           | -1       | 1         |            |         |
 * |         | at the bottom, two places: that end of the front is lower by it, which turns it       |
 * | slide   | side                  | 1        | -1        |            |         |
 * |         | height, left and right: that end of the front is higher by it, which turns it        |
 *
 * An opening out of square is a parallelogram with level rails; it shows at inset edges only, since a shared
 * gap is to another front, which is square and dialled in itself. Arithmetic of the design, no source.
 */
export function errorTerms(
  { tolerances }: Pick<ShopStandard, 'tolerances'>,
  registered: RegisteredSide,
): readonly ErrorTerm[] {
  const outward = registered === 'left' ? -1 : 1;
  const term = (source: ToleranceSource, what: string, does: Partial<ErrorTerm>): ErrorTerm => ({
    source,
    what,
    tolerance: tolerances[source],
    moves: STILL,
    opens: {},
    leans: 0,
    ...does,
  });
  const sideways = (side: number) => ({ moves: { ...STILL, side } });
  return [
    term('opening', 'opening width', { opens: { left: 0.5, right: 0.5 } }),
    term('opening', 'opening height', { opens: { top: 1 } }),
    term('opening', 'opening out of square', { leans: 1 }),
    term('box', 'box width', sideways(outward / 2)),
    term('front', 'front width', { opens: registered === 'left' ? { right: -1 } : { left: -1 } }),
    term('front', 'front height', { opens: { top: -1 } }),
    term('jig', 'side overhang of the jig', sideways(outward)),
    term('jig', 'bottom overhang of the jig', { moves: { side: 0, heightLeft: -1, heightRight: -1 } }),
    term('seating', 'seating at the side', sideways(outward)),
    term('seating', 'seating at the bottom, left', { moves: { ...STILL, heightLeft: -1 } }),
    term('seating', 'seating at the bottom, right', { moves: { ...STILL, heightRight: -1 } }),
    term('slide', 'slides to the side', sideways(1)),
    term('slide', 'height of the left slide', { moves: { ...STILL, heightLeft: 1 } }),
    term('slide', 'height of the right slide', { moves: { ...STILL, heightRight: 1 } }),
  ];
}

/** How much the gap at a place grows for each mm of each error. */
export function gapByErrors(
  place: GapPlace,
  errors: readonly ErrorTerm[],
  fit: DrawerFit,
): readonly number[] {
  const { edge } = place;
  const lean = fit.rules.edges[edge].condition.kind === 'inset' ? leanAt(place) : 0;
  return errors.map(
    ({ moves, opens, leans }) => gapGrowth(place, moves) + (opens[edge] ?? 0) + leans * lean || 0,
  );
}

/** What a lean of the opening's sides to the right does to a gap: half of it at the top, half at the bottom. */
function leanAt({ edge, corner }: GapPlace): number {
  if (edge !== 'left' && edge !== 'right') return 0;
  const atTop = corner.startsWith('top') ? 0.5 : -0.5;
  return edge === 'left' ? -atTop : atTop;
}
