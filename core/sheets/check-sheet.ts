import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { boxesApart } from '../geometry/box-pairs.ts';
import { clearance, gap } from '../geometry/clearance.ts';
import { meetSegments } from '../geometry/intersect.ts';
import { bounds, boundsOfSegment, type Bounds } from '../geometry/measure.ts';
import { segmentsOf, type Segment } from '../geometry/segments.ts';
import type { ClosedContour, Point } from '../geometry/types.ts';
import type { Operation } from '../machine/operations.ts';
import type { Feature } from '../parts/types.ts';
import { mmText } from '../units/mm-text.ts';
import { CONTOUR_ERROR, roundTo } from '../units/tolerances.ts';
import type { Pausing } from './packer/pausing.ts';
import { placedFeatures } from './placed-features.ts';
import type { PlacedPart, Sheet } from './types.ts';

/** A part of a sheet with its features where they lie. */
interface Laid {
  readonly placed: PlacedPart;
  readonly features: readonly Feature[];
  readonly cuts: Lines;
  readonly strokes: Lines;
}

/** Parts looked at between two pauses. */
const LAID = 5;

/** Looks over a finished sheet by the outlines themselves: parts keep their spacing, no cut crosses engraving. */
export function* checkSheet(sheet: Sheet, number: number, spacing: number): Pausing<readonly Finding[]> {
  const laid: Laid[] = [];
  for (const placed of sheet.placed) {
    const features = placedFeatures(placed);
    laid.push({
      placed,
      features,
      cuts: linesOf(features, ['cut-inner', 'cut-outer']),
      strokes: linesOf(features, ['engrave']),
    });
    if (laid.length % LAID === 0) yield;
  }
  const near = tooNear(laid, number, spacing);
  yield;
  return [...near, ...crossedEngraving(laid, number)];
}

const nameOf = ({ placed: { part, copy } }: Laid): string => `${part.id} (copy ${copy})`;

const solidsOf = ({ features }: Laid): readonly ClosedContour[] =>
  features.flatMap(({ operation, contour }) =>
    operation === 'cut-outer' && contour.kind !== 'path' ? [contour] : [],
  );

function tooNear(laid: readonly Laid[], number: number, spacing: number): readonly Finding[] {
  const least = spacing - CONTOUR_ERROR;
  const solids = laid.flatMap((owner) =>
    solidsOf(owner).map((contour) => ({ owner, contour, box: bounds(contour) })),
  );
  return solids.flatMap((a, index) =>
    solids.slice(index + 1).flatMap((b) => {
      if (a.owner === b.owner || gap(a.box, b.box) >= least) return [];
      const apart = clearance(a.contour, b.contour, Math.max(least, CONTOUR_ERROR));
      if (apart >= least && apart > 0) return [];
      return [
        error(
          'sheets/too-near',
          `On sheet ${number}, ${nameOf(a.owner)} and ${nameOf(b.owner)} lie ${mmText(apart)} apart; ${mmText(spacing)} is asked for.`,
          { field: `sheets.${number}` },
          { sheet: number, first: a.owner.placed.part.id, second: b.owner.placed.part.id, apart, spacing },
        ),
      ];
    }),
  );
}

/** A segment with the box about it. */
interface Line {
  readonly segment: Segment;
  readonly box: Bounds;
}

/** The lines of some operations of a part, and the box about all of them; null without any. */
interface Lines {
  readonly lines: readonly Line[];
  readonly box: Bounds | null;
}

function linesOf(features: readonly Feature[], operations: readonly Operation[]): Lines {
  const contours = features.flatMap(({ operation, contour }) =>
    operations.includes(operation) ? [contour] : [],
  );
  const lines = contours
    .flatMap((contour) => segmentsOf(contour))
    .map((segment) => ({ segment, box: boundsOfSegment(segment) }));
  return { lines, box: contours.length === 0 ? null : bounds(...contours) };
}

function crossedEngraving(laid: readonly Laid[], number: number): readonly Finding[] {
  return laid.flatMap((a) =>
    laid.flatMap((b) => {
      const where = crossing(a.cuts, b.strokes);
      if (where === null) return [];
      const [x, y] = [roundTo(where.x, 3), roundTo(where.y, 3)];
      return [
        error(
          'sheets/cut-crosses-engraving',
          `On sheet ${number}, a cut of ${nameOf(a)} runs through the engraving of ${nameOf(b)} at (${x}, ${y}) mm; move the label or shorten it.`,
          { field: `sheets.${number}` },
          { sheet: number, cut: a.placed.part.id, engraved: b.placed.part.id, x, y },
        ),
      ];
    }),
  );
}

/** A point where a cut and a stroke meet; null if none do. */
function crossing(cuts: Lines, strokes: Lines): Point | null {
  const { box } = strokes;
  if (box === null || cuts.box === null || boxesApart(box, cuts.box)) return null;
  for (const cut of cuts.lines) {
    if (boxesApart(cut.box, box)) continue;
    for (const stroke of strokes.lines) {
      if (boxesApart(cut.box, stroke.box)) continue;
      const [where] = meetSegments(cut.segment, stroke.segment);
      if (where !== undefined) return where;
    }
  }
  return null;
}
