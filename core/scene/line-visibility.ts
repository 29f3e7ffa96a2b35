import type { Point } from '../geometry/types.ts';
import { holds, nearnessOf } from './depth-order.ts';
import type { Directions } from './directions.ts';
import { inPicture, type Face } from './line-faces.ts';
import type { Line } from './types.ts';
import { dot } from './vec.ts';

export type FlatLine = readonly [Point, Point];

/** mm. A face hides what is further behind it than this; what touches it stays seen. */
const BEHIND = 0.02;

/** mm of a line between two looks at it. Less of it than that may come and go unseen. */
const STEP = 2;

/** Halvings between two looks: a line ends within STEP / 2^12 of where it should. */
const HALVINGS = 12;

/** The stretches of a line that no face hides, in the plane of the picture. */
export function visibleParts(
  [from, to]: Line,
  faces: readonly Face[],
  seen: Directions,
): readonly FlatLine[] {
  const [a, b] = [inPicture(from, seen), inPicture(to, seen)];
  const [nearA, nearB] = [dot(from, seen.viewer), dot(to, seen.viewer)];
  // What stands before no end of the line stands before none of it: both are straight.
  const near = faces.filter(
    (face) =>
      mayHide(face, a, b) && (nearnessOf(face, a) > nearA + BEHIND || nearnessOf(face, b) > nearB + BEHIND),
  );
  if (near.length === 0) return [[a, b]];
  const flatAt = (share: number): Point => ({
    x: a.x + (b.x - a.x) * share,
    y: a.y + (b.y - a.y) * share,
  });
  const isSeen = (share: number): boolean => {
    const flat = flatAt(share);
    const nearness = nearA + (nearB - nearA) * share;
    return !near.some((face) => nearnessOf(face, flat) > nearness + BEHIND && holds(face, flat));
  };
  const count = Math.max(4, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / STEP));
  // Looks are taken inside the line: at its very ends it touches its own faces.
  const shares = Array.from({ length: count }, (_, index) => (index + 0.5) / count);
  const parts: FlatLine[] = [];
  let start: number | null = null;
  let last = 0;
  for (const share of shares) {
    const visible = isSeen(share);
    if (visible && start === null) start = share === shares[0] ? 0 : border(last, share, isSeen);
    if (!visible && start !== null) {
      parts.push([flatAt(start), flatAt(border(last, share, isSeen))]);
      start = null;
    }
    last = share;
  }
  return start === null ? parts : [...parts, [flatAt(start), b]];
}

/** Where between two shares of a line it begins, or ceases, to be seen. */
function border(from: number, to: number, isSeen: (share: number) => boolean): number {
  const before = isSeen(from);
  let [low, high] = [from, to];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (isSeen(middle) === before) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const mayHide = ({ bounds: { min, max } }: Face, a: Point, b: Point): boolean =>
  min.x <= Math.max(a.x, b.x) &&
  max.x >= Math.min(a.x, b.x) &&
  min.y <= Math.max(a.y, b.y) &&
  max.y >= Math.min(a.y, b.y);
