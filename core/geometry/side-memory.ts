import type { Path64, Point64 } from 'clipper2-ts';
import type { Chain } from './chain.ts';
import type { Point } from './types.ts';

/** Grid steps per mm of the integers that the clipper works in: 10 nm, and exact products up to 900 mm. */
const GRID = 1e5;

export const fromGrid = ({ x, y }: Point64): Point => ({ x: x / GRID, y: y / GRID });

/**
 * Which sources the sides at a corner have, kept through a clipping. The clipper carries one number along with
 * each point (`z`). Here it names an input corner; where sides cross, a new number stands for both of them.
 */
export interface SideMemory {
  /** A chain on the clipper's grid, its corners numbered. */
  readonly toPath: (chain: Chain) => Path64;
  /** To be called where two sides cross, with their ends: numbers the point. */
  readonly crossing: (
    bottom1: Point64,
    top1: Point64,
    bottom2: Point64,
    top2: Point64,
    meeting: Point64,
  ) => void;
  /** The source of the side between two corners that follow each other in the input; -1 for any other two. */
  readonly between: (a: Point64, b: Point64) => number;
  /** All sources known at a point. */
  readonly at: (point: Point64) => readonly number[];
}

export function sideMemory(): SideMemory {
  // Indexed by number; number 0 is the clipper's "none".
  const [arriving, leaving, next] = [[-1], [-1], [0]];
  const crossings = new Map<number, readonly number[]>();

  const toPath = (chain: Chain): Path64 => {
    const { path, sources } = onGrid(chain);
    const first = next.length;
    for (const [index, point] of path.entries()) {
      point.z = first + index;
      arriving.push(sources.at(index - 1) ?? -1);
      leaving.push(sources[index] ?? -1);
      next.push(first + ((index + 1) % path.length));
    }
    return path;
  };
  const between = (a: Point64, b: Point64): number => {
    const [from, to] = [a.z ?? 0, b.z ?? 0];
    if (from === 0 || to === 0) return -1;
    if (next[from] === to) return leaving[from] ?? -1;
    return next[to] === from ? (leaving[to] ?? -1) : -1;
  };
  const at = ({ z = 0 }: Point64): readonly number[] =>
    crossings.get(z) ?? [arriving[z] ?? -1, leaving[z] ?? -1];
  const crossing: SideMemory['crossing'] = (bottom1, top1, bottom2, top2, meeting) => {
    // Where the crossing falls on a corner the clipper has put that corner's number already.
    const sides = [...at(meeting), between(bottom1, top1), between(bottom2, top2)];
    meeting.z = next.length;
    crossings.set(next.length, sides);
    next.push(-1);
    arriving.push(-1);
    leaving.push(-1);
  };
  return { toPath, crossing, between, at };
}

/** Rounds a chain to the grid; sides of no length go, and with them their sources. */
function onGrid({ points, sources }: Chain): { readonly path: Path64; readonly sources: readonly number[] } {
  const path: Path64 = [];
  const kept: number[] = [];
  for (const [index, point] of points.entries()) {
    const [x, y] = [Math.round(point.x * GRID), Math.round(point.y * GRID)];
    const last = path.at(-1);
    if (last !== undefined && last.x === x && last.y === y) kept.pop();
    else path.push({ x, y, z: 0 });
    kept.push(sources[index] ?? -1);
  }
  const [first] = path;
  while (path.length > 1 && path.at(-1)?.x === first?.x && path.at(-1)?.y === first?.y) {
    path.pop();
    kept.pop();
  }
  return { path, sources: kept };
}
