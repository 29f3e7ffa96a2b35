import { difference } from '../geometry/boolean.ts';
import { contains } from '../geometry/contains.ts';
import { signedArea } from '../geometry/measure.ts';
import { clockwise, counterClockwise } from '../geometry/orient.ts';
import { relieveCorners } from '../geometry/relief.ts';
import type { ClosedContour, Point, RingContour } from '../geometry/types.ts';
import type { Hole, Piece } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { polygonOf } from './polygon-of.ts';
import type { Layer } from './types.ts';

/**
 * A piece of a jig as it comes off the machine: inside corners relieved, pockets sunk from its upper face.
 * The layers lie on top of one another, from 0 to the sheet's thickness.
 */
export function pieceLayers(piece: Piece, machine: MachineProfile): readonly Layer[] {
  const relieved = (ring: RingContour, corners: readonly Point[]): RingContour =>
    relieveCorners(ring, corners, machine.reliefRadius).ring;
  const holeOf = ({ contour, seatCorners }: Hole): ClosedContour =>
    contour.kind === 'ring' && machine.kind === 'router'
      ? relieved(clockwise(contour), seatCorners)
      : contour;

  const { thickness } = machine.sheet;
  const outline = relieved(counterClockwise(piece.outline), piece.seatCorners);
  const whole: readonly ClosedContour[] = [outline, ...piece.holes.map(holeOf).map(clockwise)];
  const corners = [piece, ...piece.holes].flatMap(({ seatCorners }) => seatCorners);
  const depths = [...new Set(piece.pockets.map(({ depth }) => depth))].toSorted((a, b) => b - a);
  const floors = [0, ...depths.map((depth) => thickness - depth), thickness];
  return floors.slice(0, -1).flatMap((from, index) => {
    const open = piece.pockets.filter(({ depth }) => thickness - depth <= from);
    const area =
      open.length === 0
        ? whole
        : difference(
            whole,
            open.map(({ contour }) => contour),
          ).value;
    return stretches(area, corners, from, floors[index + 1] ?? thickness);
  });
}

/** One layer for each outline of an area, with the holes that lie in it. */
function stretches(
  area: readonly ClosedContour[],
  corners: readonly Point[],
  from: number,
  to: number,
): readonly Layer[] {
  const points = (contour: ClosedContour) => polygonOf(contour, corners);
  const isOutline = (contour: ClosedContour): boolean => contour.kind === 'ring' && signedArea(contour) > 0;
  const holes = area.filter((contour) => !isOutline(contour));
  return area.filter(isOutline).map((outline) => ({
    outline: points(outline),
    holes: holes
      .map(points)
      .filter(([corner]) => corner !== undefined && contains(outline, corner))
      .map(clockwisePoints),
    from,
    to,
  }));
}

/** A circle has no direction of its own and is walked counter-clockwise. */
function clockwisePoints(points: readonly Point[]): readonly Point[] {
  const ring: RingContour = { kind: 'ring', vertices: points.map((point) => ({ ...point, bulge: 0 })) };
  return signedArea(ring) > 0 ? points.toReversed() : points;
}
