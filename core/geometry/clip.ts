import { Clipper64, ClipType, FillRule, type Path64, type Point64 } from 'clipper2-ts';
import type { Chain, Piece } from './chain.ts';
import { distanceToSegment } from './distance.ts';
import type { Point } from './types.ts';
import { midpoint } from './vector.ts';

/** Grid steps per mm of the integers that the clipper works in: 10 nm, and exact products up to 900 mm. */
const GRID = 1e5;

export const OPERATIONS = {
  union: ClipType.Union,
  difference: ClipType.Difference,
  intersection: ClipType.Intersection,
} as const;

/** Which windings count as inside: any but 0, only positive ones, or only negative ones. */
export const RULES = {
  nonzero: FillRule.NonZero,
  positive: FillRule.Positive,
  negative: FillRule.Negative,
} as const;

export interface ClipJob {
  readonly operation: keyof typeof OPERATIONS;
  readonly rule: keyof typeof RULES;
  readonly subject: readonly Chain[];
  readonly clip: readonly Chain[];
  /** What the numbers in the chains' `sources` stand for. */
  readonly pieces: readonly Piece[];
}

/**
 * The outlines of a boolean operation on chains, each side still naming the piece that it came from: outer ones
 * counter-clockwise, holes clockwise; null if the clipper gave up.
 *
 * The clipper carries one number along with each point. Here it names the input corner; where sides cross, a new
 * number stands for both sides. A side of the result comes from the piece that both its ends know.
 */
export function clipChains(job: ClipJob): readonly Chain[] | null {
  const knows: (readonly number[])[] = [[]]; // number 0 is the clipper's "none"
  const next: number[] = [0];
  const toPath = ({ points, sources }: Chain): Path64 => {
    const path: Path64 = [];
    const kept: number[] = [];
    for (const [index, point] of points.entries()) {
      const [x, y] = [Math.round(point.x * GRID), Math.round(point.y * GRID)];
      const last = path.at(-1);
      if (last !== undefined && last.x === x && last.y === y) {
        kept.pop(); // a side of no length: the corner's leaving side is the one that goes on
      } else {
        path.push({ x, y, z: 0 });
      }
      kept.push(sources[index] ?? -1);
    }
    while (path.length > 1 && samePlace(path[0], path.at(-1))) {
      path.pop();
      kept.pop();
    }
    const first = knows.length;
    for (const [index, point] of path.entries()) {
      point.z = first + index;
      const arriving = kept[(index + kept.length - 1) % kept.length] ?? -1;
      knows.push([arriving, kept[index] ?? -1]);
      next.push(first + ((index + 1) % path.length));
    }
    return path;
  };
  const leaving = (z: number): number => knows[z]?.[1] ?? -1;
  const between = (a: Point64, b: Point64): number => {
    const [from, to] = [a.z ?? 0, b.z ?? 0];
    if (next[from] === to) return leaving(from);
    return next[to] === from ? leaving(to) : -1;
  };

  const clipper = new Clipper64();
  clipper.preserveCollinear = true;
  clipper.zCallback = (bottom1, top1, bottom2, top2, meeting): void => {
    const sides = [between(bottom1, top1), between(bottom2, top2)].filter((side) => side >= 0);
    knows.push([...(knows[meeting.z ?? 0] ?? []), ...sides]);
    meeting.z = knows.length - 1;
    next.push(-1);
  };
  clipper.addSubject(job.subject.map(toPath));
  clipper.addClip(job.clip.map(toPath));
  // With the negative rule the clipper turns outlines round, so that outer ones come clockwise.
  clipper.reverseSolution = false;
  const solution: Path64[] = [];
  if (!clipper.execute(OPERATIONS[job.operation], RULES[job.rule], solution)) return null;

  const toPoint = ({ x, y }: Point64): Point => ({ x: x / GRID, y: y / GRID });
  return solution.map((path) => {
    const points = path.map(toPoint);
    const sources = path.map((from, index) => {
      const to = path[(index + 1) % path.length] ?? from;
      const [a, b] = [knows[from.z ?? 0] ?? [], knows[to.z ?? 0] ?? []];
      const common = a.filter((source) => b.includes(source));
      return bestPiece(toPoint(from), toPoint(to), [common, [...a, ...b]], job.pieces);
    });
    return { points, sources };
  });
}

const samePlace = (a: Point64 | undefined, b: Point64 | undefined): boolean => a?.x === b?.x && a?.y === b?.y;

/** mm. A side further than this from a piece did not come from it: the flattening and the grid, with room. */
const OWN = 0.001;

/** The piece that a side lies on best: of the likely ones if any fits, the likelier first, else of all. */
function bestPiece(
  start: Point,
  end: Point,
  likely: readonly (readonly number[])[],
  pieces: readonly Piece[],
): number {
  const places = [midpoint(start, end), start, end];
  const bestOf = (numbers: Iterable<number>): { number: number; stray: number } => {
    let best = { number: -1, stray: Infinity };
    for (const number of numbers) {
      const piece = pieces[number];
      if (piece === undefined || number === best.number) continue;
      let stray = 0;
      for (const place of places) stray = Math.max(stray, distanceToSegment(place, piece.segment));
      if (stray < best.stray) best = { number, stray };
    }
    return best;
  };
  for (const numbers of likely) {
    const best = bestOf(numbers);
    if (best.stray <= OWN) return best.number;
  }
  return bestOf(pieces.keys()).number;
}
