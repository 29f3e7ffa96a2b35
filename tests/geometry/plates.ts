import * as fc from 'fast-check';
import { fillet } from '../../core/geometry/fillet.ts';
import { segmentsOf, turnBetween } from '../../core/geometry/segments.ts';
import type { Point, RingContour, Vertex } from '../../core/geometry/types.ts';

/**
 * Seeded random plates: a board with notches, tabs, vees and half-round bites along its sides and fillets on some
 * of its corners. Half of them have whole, inch-like or tenth sizes, where sides like to fall on each other.
 */
export interface PlateRecipe {
  /** Size of one step in mm. */
  readonly unit: number;
  /** Board in steps. */
  readonly width: number;
  readonly height: number;
  readonly bites: readonly Bite[];
  /** Fillet radius in steps for each corner in turn, 0 for a sharp one. */
  readonly radii: readonly number[];
}

export interface Bite {
  readonly side: 'bottom' | 'right' | 'top' | 'left';
  /** Which of the five places along the side. */
  readonly slot: number;
  readonly shape: 'notch' | 'tab' | 'vee' | 'dovetail' | 'round';
  /** In steps, cut to what the place allows. */
  readonly width: number;
  readonly depth: number;
}

const bite: fc.Arbitrary<Bite> = fc.record({
  side: fc.constantFrom('bottom', 'right', 'top', 'left'),
  slot: fc.integer({ min: 0, max: 4 }),
  shape: fc.constantFrom('notch', 'tab', 'vee', 'dovetail', 'round'),
  width: fc.integer({ min: 2, max: 60 }),
  depth: fc.integer({ min: 1, max: 60 }),
});

const recipe = (unit: fc.Arbitrary<number>): fc.Arbitrary<PlateRecipe> =>
  fc.record({
    unit,
    width: fc.integer({ min: 60, max: 400 }),
    height: fc.integer({ min: 30, max: 200 }),
    bites: fc.array(bite, { maxLength: 6 }),
    radii: fc.array(fc.constantFrom(0, 0, 0, 1, 2, 3, 6), { minLength: 1, maxLength: 12 }),
  });

export const plateRecipes: fc.Arbitrary<PlateRecipe> = fc.oneof(
  recipe(fc.constantFrom(1, 0.5, 0.1, 25.4 / 32, 25.4 / 64)),
  recipe(fc.double({ min: 0.1, max: 1.2, noNaN: true })),
);

/** Offsets in mm: 0.05 to 6.35, both signs, tool radii and kerfs among them. */
export const distances: fc.Arbitrary<number> = fc
  .tuple(
    fc.constantFrom(1, -1),
    fc.oneof(
      fc.constantFrom(0.05, 0.075, 0.1, 0.5, 1, 2, 3, 3.175, 5, 6, 6.35),
      fc.double({ min: 0.05, max: 6.35, noNaN: true }),
    ),
  )
  .map(([sign, size]) => sign * size);

/** A bite's corners in steps, along the side and into the board, with the bulge of the segment that leaves. */
function profile({ shape, width, depth }: Bite, middle: number, room: number, deepest: number) {
  const half = Math.max(1, Math.min(Math.floor(width / 2), room));
  const into = Math.max(1, Math.min(depth, deepest));
  const [from, to] = [middle - half, middle + half];
  const corner = (along: number, deep: number, bulge = 0) => ({ along, deep, bulge });
  if (shape === 'vee') return [corner(from, 0), corner(middle, into), corner(to, 0)];
  if (shape === 'round') return [corner(from, 0, -1), corner(to, 0)];
  if (shape === 'tab') {
    return [corner(from, 0), corner(from, -into), corner(to, -into), corner(to, 0)];
  }
  const flare = shape === 'dovetail' ? half / 2 : 0;
  return [corner(from, 0), corner(from - flare, into), corner(to + flare, into), corner(to, 0)];
}

/** The board of a recipe before its fillets. */
function board({ unit, width, height, bites }: PlateRecipe): RingContour {
  const at = (x: number, y: number, bulge = 0): Vertex => ({ x: x * unit, y: y * unit, bulge });
  const along = (side: Bite['side'], length: number, deepest: number) =>
    [0, 1, 2, 3, 4].flatMap((slot) => {
      const here = bites.find((candidate) => candidate.side === side && candidate.slot === slot);
      // Places stand in the middle 60 % of a side, so that bites of two sides never meet in a corner.
      const middle = Math.round(length * (0.26 + 0.12 * slot));
      return here === undefined ? [] : profile(here, middle, Math.floor(length * 0.035), deepest);
    });
  const [across, up] = [Math.floor(height * 0.4), Math.floor(width * 0.15)];
  return {
    kind: 'ring',
    vertices: [
      at(0, 0),
      ...along('bottom', width, across).map((c) => at(c.along, c.deep, c.bulge)),
      at(width, 0),
      ...along('right', height, up).map((c) => at(width - c.deep, c.along, c.bulge)),
      at(width, height),
      ...along('top', width, across).map((c) => at(width - c.along, height - c.deep, c.bulge)),
      at(0, height),
      ...along('left', height, up).map((c) => at(c.deep, height - c.along, c.bulge)),
    ],
  };
}

/** Rounds the corners that have room, last one first so that indices stay true. */
export function plate(from: PlateRecipe): RingContour {
  let ring = board(from);
  for (let index = ring.vertices.length - 1; index >= 0; index -= 1) {
    const radius = (from.radii[index % from.radii.length] ?? 0) * from.unit;
    const segments = segmentsOf(ring);
    const [before, after] = [segments.at(index - 1), segments[index]];
    if (radius === 0 || before?.kind !== 'line' || after?.kind !== 'line') continue;
    const setback = radius * Math.tan(Math.abs(turnBetween(before, after)) / 2);
    const room = Math.min(lineLength(before), lineLength(after));
    if (setback < 0.45 * room) ring = fillet(ring, index, radius);
  }
  return ring;
}

const lineLength = ({ start, end }: { readonly start: Point; readonly end: Point }): number =>
  Math.hypot(end.x - start.x, end.y - start.y);
