import type { Outcome } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';
import { CONTOUR_ERROR } from '../units/tolerances.ts';
import { chainOf, type Chain, type Piece } from './chain.ts';
import { clipChains, type ClipJob } from './clip.ts';
import { distanceTo } from './nearest.ts';
import { polyline } from './polyline.ts';
import { rebuild } from './rebuild.ts';
import { cutterLoops, regionLoops, type Loop } from './region.ts';
import { isSplinter, strays } from './result-check.ts';
import type { Segment } from './segments.ts';
import type { ClosedContour } from './types.ts';
import { touchFindings } from './touching.ts';
import { setAsideUntouched, type Membership } from './untouched.ts';

type Area = readonly ClosedContour[];

/**
 * What is left of an area when cutters are taken away; exact lines and arcs, untouched circles stay circles.
 *
 *     difference([plate, hole], [slot, slot])   // the plate's outline, its hole, and what the slots cut
 *
 * `a` is an area (counter-clockwise rings, clockwise holes, circles inside it holes); each contour of `b` is
 * solid by itself, and a clockwise ring in a larger cutter spares what it holds. Outer rings come back
 * counter-clockwise, holes clockwise; a circle within a ring is a hole. Findings: `geometry/touches` and
 * `geometry/boolean-approximate` (warnings), `geometry/boolean-failed` (error).
 */
export const difference = (a: Area, b: Area): Outcome<Area> =>
  combine('difference', regionLoops(a), cutterLoops(b));

/** Both areas as one; see `difference` for what an area is. */
export const union = (a: Area, b: Area): Outcome<Area> => combine('union', regionLoops(a), regionLoops(b));

/** What two areas share; see `difference` for what an area is. */
export const intersection = (a: Area, b: Area): Outcome<Area> =>
  combine('intersection', regionLoops(a), regionLoops(b));

/** mm. How finely arcs are flattened to find the topology; the finer look is for crossings left in doubt. */
const FLATNESS = [0.0005, 0.0001, 0.00002] as const;

const BELONGS: Readonly<Record<ClipJob['operation'], Membership>> = {
  union: (a, b) => a !== 0 || b !== 0,
  difference: (a, b) => a !== 0 && b === 0,
  intersection: (a, b) => a !== 0 && b !== 0,
};

function combine(operation: ClipJob['operation'], a: readonly Loop[], b: readonly Loop[]): Outcome<Area> {
  const sorted = setAsideUntouched(a, b, BELONGS[operation]);
  const { value, findings } = clipLoops(operation, sorted.a, sorted.b);
  return { value: [...value, ...sorted.contours], findings };
}

function clipLoops(operation: ClipJob['operation'], a: readonly Loop[], b: readonly Loop[]): Outcome<Area> {
  const loops = [...a, ...b].map(({ segments }) => segments);
  if (loops.length === 0) return { value: [], findings: [] };
  const pieces: readonly Piece[] = loops.flat().map((segment) => ({ segment, auxiliary: false }));
  const away = distanceTo(loops.flat());
  let rough: readonly Chain[] | null = null;
  for (const flatness of FLATNESS) {
    const chains = chainsOf(loops, pieces, flatness);
    const found = clipChains({
      operation,
      rule: 'nonzero',
      subject: chains.slice(0, a.length),
      clip: chains.slice(a.length),
      pieces,
    })?.filter((chain) => !isSplinter(chain));
    if (found === undefined) continue;
    const rebuilt = found.map((chain) => rebuild(chain, pieces)).filter((contours) => contours !== null);
    const value = rebuilt.flat();
    if (rebuilt.length === found.length && strays(value, away) <= CONTOUR_ERROR) {
      return { value, findings: touchFindings(value) };
    }
    rough ??= found;
  }
  return rough === null ? failed(operation) : approximate(operation, rough);
}

/** One chain for each loop, sides numbered through all loops. */
function chainsOf(
  loops: readonly (readonly Segment[])[],
  pieces: readonly Piece[],
  flatness: number,
): readonly Chain[] {
  let first = 0;
  return loops.map((loop) => {
    const chain = chainOf(pieces.slice(first, first + loop.length), first, flatness);
    first += loop.length;
    return chain;
  });
}

const failed = (operation: string): Outcome<Area> => ({
  value: [],
  findings: [error('geometry/boolean-failed', `The ${operation} of two outlines could not be found.`)],
});

const approximate = (operation: string, chains: readonly Chain[]): Outcome<Area> => ({
  value: chains.map(polyline),
  findings: [
    warning(
      'geometry/boolean-approximate',
      `The ${operation} of two outlines is drawn in short straight sides instead of arcs.`,
    ),
  ],
});
