import { type GapPlace, type Move } from '../budget/places.ts';
import type { Span } from '../budget/types.ts';
import { boundedLeastSquares } from './bounded-least-squares.ts';
import type { Readings } from './readings.ts';
import type { AdjusterName, AdjusterSettings } from './types.ts';

/** Adjusters that are moved together, by the same amount. */
interface Unknown {
  readonly adjusters: readonly AdjusterName[];
  readonly growth: (place: GapPlace) => number;
}

const SIDE: Unknown = { adjusters: ['side'], growth: ({ by }) => by.side };
const LEFT: Unknown = { adjusters: ['heightLeft'], growth: ({ by }) => by.heightLeft };
const RIGHT: Unknown = { adjusters: ['heightRight'], growth: ({ by }) => by.heightRight };
const BOTH: Unknown = {
  adjusters: ['heightLeft', 'heightRight'],
  growth: ({ by }) => by.heightLeft + by.heightRight,
};

/**
 * Whether the readings tell how far the front is turned: two of one edge do. Readings of opposite edges would
 * take a front that is too large for one that is turned.
 */
export const tellsTurn = ({ gaps }: Readings): boolean =>
  gaps.some((one, index) => gaps.slice(index + 1).some((other) => other.edge === one.edge));

/** Whether any reading tells about the front's place across the cabinet, or up and down. */
export const tellsSide = ({ gaps }: Readings): boolean => gaps.some(({ by }) => by.side !== 0);
export const tellsHeight = ({ gaps }: Readings): boolean => gaps.some(({ by }) => by.side === 0);

/**
 * The move that brings the gaps nearest to the ones wanted, by least squares, with every adjuster inside
 * what is left of its range. What is not read is left alone.
 */
export function wantedMove(readings: Readings, room: Readonly<Record<AdjusterName, Span>>): Move {
  const unknowns = [
    ...(tellsSide(readings) ? [SIDE] : []),
    ...(tellsTurn(readings) ? [LEFT, RIGHT] : tellsHeight(readings) ? [BOTH] : []),
  ];
  const solved = boundedLeastSquares(
    readings.gaps.map((reading) => ({
      constant: reading.seen - reading.wanted,
      coefficients: unknowns.map(({ growth }) => growth(reading)),
    })),
    unknowns.map(({ adjusters }) => ({
      least: Math.max(...adjusters.map((name) => room[name].least)),
      most: Math.min(...adjusters.map((name) => room[name].most)),
    })),
  );
  const by = (name: AdjusterName) =>
    solved[unknowns.findIndex(({ adjusters }) => adjusters.includes(name))] ?? 0;
  return { side: by('side'), heightLeft: by('heightLeft'), heightRight: by('heightRight') };
}

/**
 * The depth and tilt that make the corners flush, by least squares. Tilt moves the top edge and leaves the
 * bottom; it is told only by readings at top and bottom.
 */
export function wantedFlush(
  { proud }: Readings,
  room: Readonly<Record<AdjusterName, Span>>,
): Pick<AdjusterSettings, 'depth' | 'tilt'> {
  if (proud.length === 0) return { depth: 0, tilt: 0 };
  const isTop = (corner: string) => corner.startsWith('top');
  const tells = proud.some(({ corner }) => isTop(corner)) && proud.some(({ corner }) => !isTop(corner));
  const [depth = 0, tilt = 0] = boundedLeastSquares(
    proud.map(({ corner, seen }) => ({
      constant: seen,
      coefficients: tells ? [1, isTop(corner) ? 1 : 0] : [1],
    })),
    tells ? [room.depth, room.tilt] : [room.depth],
  );
  return { depth, tilt };
}
