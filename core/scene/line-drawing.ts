import { line, point, text } from '../files/paper/page/draw.ts';
import { STROKES } from '../files/paper/page/strokes.ts';
import type { PaperDrawing, PaperItem } from '../files/paper/page/types.ts';
import { difference, intersection } from '../geometry/boolean.ts';
import type { Bounds } from '../geometry/measure.ts';
import { polygon } from '../geometry/polygon.ts';
import { clockwise, counterClockwise } from '../geometry/orient.ts';
import type { ClosedContour, PathContour } from '../geometry/types.ts';
import type { LengthUnit } from '../units/unit.ts';
import { dimensionText } from './dimensions.ts';
import { nearnessOf } from './depth-order.ts';
import { directionsOf, type Directions } from './directions.ts';
import { inPicture, seenSolid, uniqueLines, type Face } from './line-faces.ts';
import { visibleParts, type FlatLine } from './line-visibility.ts';
import type { SeatScene, StandardView } from './types.ts';

/** Grey of the jig, so that it stands out from front and box. */
const JIG = 0.84;

/** How much more is shown than a view asks for, for the words; and the least height, as a share of the width. */
const ROOM = 1.15;
const LEAST_HEIGHT = 0.8;

/** mm of the picture's plane. From the arrow down to its words, which keep their size however small it is drawn. */
const BELOW = 14;

/** mm on paper. */
const TEXT = 3;

/**
 * A seat as a line drawing for paper: hidden lines removed, the jig grey, the overhangs that it sets and the
 * arrow to the cabinet's left with their words. From the same solids as the view on the screen; 1 mm of the
 * drawing is 1 mm of the picture's plane.
 */
export function lineDrawing(scene: SeatScene, view: StandardView, unit: LengthUnit): PaperDrawing {
  const seen = directionsOf(view);
  const parts = scene.solids.map((solid) => ({ solid, ...seenSolid(solid, seen) }));
  // A ghost is there to be seen past: it hides nothing, and its lines are faint.
  const faces = parts.filter(({ solid }) => !solid.ghost).flatMap((part) => part.faces);
  const frame = frameOf(view, seen);
  const clip = (items: readonly PaperItem[]): PaperItem => ({
    kind: 'group',
    origin: { x: 0, y: 0 },
    scale: { x: 1, y: 1 },
    clip: frame,
    items,
  });
  return {
    frame,
    items: [
      clip([
        ...jigFill(faces),
        ...parts.flatMap(({ solid, edges }): readonly PaperItem[] => {
          const stroke = solid.ghost ? STROKES.faint : solid.group === 'jig' ? STROKES.cut : STROKES.thin;
          const lines = uniqueLines(edges, seen).flatMap((edge) => visibleParts(edge, faces, seen));
          return lines.length === 0 ? [] : [{ kind: 'contour', contours: lines.map(pathOf), stroke }];
        }),
      ]),
      ...scene.dimensions.flatMap((dimension) => dimensionItems(dimension, seen, unit)),
      ...arrowItems(scene.cabinetLeft.arrow, seen),
    ],
  };
}

function frameOf({ focus, half }: StandardView, seen: Directions): PaperDrawing['frame'] {
  const middle = inPicture(focus, seen);
  const [across, up] = [half.across * ROOM, Math.max(half.up * ROOM, half.across * LEAST_HEIGHT)];
  return { x: middle.x - across, y: middle.y - up, w: 2 * across, h: 2 * up };
}

const pathOf = (ends: FlatLine): PathContour => ({
  kind: 'path',
  vertices: ends.map(({ x, y }) => ({ x, y, bulge: 0 })),
});

/** The jig's faces in grey, as far as nothing stands before them. */
function jigFill(faces: readonly Face[]): readonly PaperItem[] {
  const flat = faces.map((face): FlatFace => ({ face, area: areaOf(face) }));
  const others = flat.filter(({ face }) => face.group !== 'jig');
  const seenOf = (one: FlatFace): readonly ClosedContour[] =>
    others
      .filter((other) => standsBefore(other, one))
      .reduce<readonly ClosedContour[]>(
        (left, other) => (left.length === 0 ? left : difference(left, other.area).value),
        one.area,
      );
  return flat
    .filter(({ face }) => face.group === 'jig' && !face.inHole)
    .map(seenOf)
    .flatMap((area): readonly PaperItem[] =>
      area.length === 0 ? [] : [{ kind: 'contour', contours: area, fill: JIG }],
    );
}

/** A face with what it covers of the picture. */
interface FlatFace {
  readonly face: Face;
  readonly area: readonly ClosedContour[];
}

/**
 * Whether a face hides part of another. The faces of solids that do not run into one another are before or
 * behind in the whole of where they overlap, so any point in there tells.
 */
function standsBefore({ face: other, area: cover }: FlatFace, { face, area }: FlatFace): boolean {
  if (!meet(other.bounds, face.bounds)) return false;
  const leads = cornerLeads(other, face);
  if (leads.every((lead) => lead <= 0)) return false;
  if (leads.every((lead) => lead > 0)) return true;
  const [overlap] = intersection(area, cover).value;
  if (overlap === undefined || overlap.kind === 'circle') return false;
  const { length } = overlap.vertices;
  const middle = point(
    overlap.vertices.reduce((sum, { x }) => sum + x, 0) / length,
    overlap.vertices.reduce((sum, { y }) => sum + y, 0) / length,
  );
  return nearnessOf(other, middle) > nearnessOf(face, middle);
}

/**
 * mm. How much nearer one face is than another at the corners of the box in which both can be; as faces are flat,
 * it is most and least there.
 */
function cornerLeads(other: Face, face: Face): readonly number[] {
  const { min, max } = face.bounds;
  const xs = [Math.max(min.x, other.bounds.min.x), Math.min(max.x, other.bounds.max.x)];
  const ys = [Math.max(min.y, other.bounds.min.y), Math.min(max.y, other.bounds.max.y)];
  return xs.flatMap((x) => ys.map((y) => nearnessOf(other, { x, y }) - nearnessOf(face, { x, y })));
}

const meet = (a: Bounds, b: Bounds): boolean =>
  a.min.x < b.max.x && b.min.x < a.max.x && a.min.y < b.max.y && b.min.y < a.max.y;

const areaOf = ({ rings: [outline = [], ...holes] }: Face): readonly ClosedContour[] => [
  counterClockwise(polygon(outline)),
  ...holes.map((hole) => clockwise(polygon(hole))),
];

function dimensionItems(
  dimension: SeatScene['dimensions'][number],
  seen: Directions,
  unit: LengthUnit,
): readonly PaperItem[] {
  const [tail, tip] = dimension.line;
  const [from, to] = [inPicture(tail, seen), inPicture(tip, seen)];
  const off = inPicture(dimension.side, seen);
  const length = Math.hypot(off.x, off.y);
  const way = length === 0 ? point(1, 0) : point(off.x / length, off.y / length);
  const middle = point((from.x + to.x) / 2 + way.x * 4, (from.y + to.y) / 2 + way.y * 4 - 1);
  return [
    ...dimension.witnesses.map(([a, b]) => line(inPicture(a, seen), inPicture(b, seen), STROKES.thin)),
    line(from, to, STROKES.cut),
    text(dimensionText(dimension, unit), middle, TEXT, {
      bold: true,
      halo: true,
      anchor: way.x < -0.3 ? 'end' : way.x > 0.3 ? 'start' : 'middle',
    }),
  ];
}

function arrowItems(
  { line: [tail, tip], text: words }: SeatScene['cabinetLeft']['arrow'],
  seen: Directions,
): readonly PaperItem[] {
  const [from, to] = [inPicture(tail, seen), inPicture(tip, seen)];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  if (length < 10) return [];
  const [ux, uy] = [dx / length, dy / length];
  const barb = (turn: 1 | -1) => point(to.x - ux * 9 - turn * uy * 4, to.y - uy * 9 + turn * ux * 4);
  return [
    line(from, to, STROKES.strong),
    line(barb(1), to, STROKES.strong),
    line(barb(-1), to, STROKES.strong),
    text(words, point((from.x + to.x) / 2, Math.min(from.y, to.y) - BELOW), TEXT, {
      bold: true,
      halo: true,
      anchor: 'middle',
    }),
  ];
}
