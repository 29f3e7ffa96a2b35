import { Clipper64, ClipType, FillRule, type Path64, type Point64 } from 'clipper2-ts';
import type { Chain, Piece } from './chain.ts';
import { ownPiece } from './own-piece.ts';
import { fromGrid, sideMemory } from './side-memory.ts';

const OPERATIONS = {
  union: ClipType.Union,
  difference: ClipType.Difference,
  intersection: ClipType.Intersection,
} as const;

/** Which windings count as inside: any but 0, only positive ones, or only negative ones. */
const RULES = {
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
 */
export function clipChains(job: ClipJob): readonly Chain[] | null {
  const memory = sideMemory();
  const clipper = new Clipper64();
  clipper.preserveCollinear = true;
  clipper.zCallback = memory.crossing;
  clipper.addSubject(job.subject.map(memory.toPath));
  clipper.addClip(job.clip.map(memory.toPath));
  const solution: Path64[] = [];
  if (!clipper.execute(OPERATIONS[job.operation], RULES[job.rule], solution)) return null;
  const sourceOf = (from: Point64, to: Point64): number => {
    const source = memory.between(from, to);
    if (source >= 0) return source;
    return ownPiece(fromGrid(from), fromGrid(to), memory.at(from), memory.at(to), job.pieces);
  };
  return solution.map((path) => ({
    points: path.map(fromGrid),
    sources: path.map((from, index) => sourceOf(from, path[(index + 1) % path.length] ?? from)),
  }));
}
