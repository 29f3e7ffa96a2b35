import { line, point, text } from '../files/paper/page/draw.ts';
import { STROKES } from '../files/paper/page/strokes.ts';
import type { ContourItem, PaperDrawing, PaperItem, Stroke } from '../files/paper/page/types.ts';
import { polygon } from '../geometry/polygon.ts';
import { distance } from '../geometry/vector.ts';
import type { Contour, Point } from '../geometry/types.ts';
import type { LengthUnit } from '../units/unit.ts';
import { dimensionText } from './dimensions.ts';
import { directionsOf, type Directions } from './directions.ts';
import { inPicture } from './line-faces.ts';
import { paintedScene } from './painted-scene.ts';
import type { SeatScene, StandardView } from './types.ts';

/** mm on paper, so that no gap is seen between two faces of one colour. */
const SEAM = 0.05;

/** A grey that hides what has been drawn before it. */
const opaque = (grey: number) => ({ fill: grey, stroke: { width: SEAM, grey } });

/** The jig stands out from front and box. */
const [JIG, WOOD] = [opaque(0.84), opaque(1)];

/** mm. */
const MEET = 0.001;

/** How much more is shown than a view asks for, for the words; and the least height, as a share of the width. */
const ROOM = 1.15;
const LEAST_HEIGHT = 0.8;

/** mm of the picture's plane. From the arrow down to its words, which keep their size however small it is drawn. */
const BELOW = 14;

/** mm on paper. */
const TEXT = 3;

/**
 * A seat as a line drawing for paper: what is before something hides it, the jig grey, the overhangs that it sets and
 * the arrow to the cabinet's left with their words. From the same solids as the view on the screen; 1 mm of the
 * drawing is 1 mm of the picture's plane.
 */
export function lineDrawing(scene: SeatScene, view: StandardView, unit: LengthUnit): PaperDrawing {
  const seen = directionsOf(view);
  const frame = frameOf(view, seen);
  const jig = new Set(scene.solids.filter(({ group }) => group === 'jig').map(({ id }) => id));
  return {
    frame,
    items: [
      {
        kind: 'group',
        origin: { x: 0, y: 0 },
        scale: { x: 1, y: 1 },
        clip: frame,
        items: runs(
          paintedScene(scene.solids, [], seen).map((one) => {
            if (one.kind === 'line')
              return drawn([one.ends], one.mark === 'ghost' ? STROKES.faint : STROKES.thin);
            const isJig = jig.has(one.solid);
            if (one.kind === 'borders') return drawn(one.strokes, isJig ? STROKES.cut : STROKES.thin);
            return { kind: 'contour', contours: one.rings.map(polygon), ...(isJig ? JIG : WOOD) };
          }),
        ),
      },
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

/** What is drawn alike, one after another, is one thing to draw: where faces overlap, borders come between. */
function runs(items: readonly ContourItem[]): readonly ContourItem[] {
  const found: ContourItem[] = [];
  for (const item of items) {
    const last = found.at(-1);
    if (last === undefined || last.fill !== item.fill || last.stroke !== item.stroke) found.push(item);
    else found.splice(-1, 1, { ...last, contours: [...last.contours, ...item.contours] });
  }
  return found;
}

const drawn = (strokes: readonly (readonly Point[])[], stroke: Stroke): ContourItem => ({
  kind: 'contour',
  contours: strokes.map(strokeContour),
  stroke,
});

/** A stroke that closes has no ends, and so no notch where they would meet. */
function strokeContour(points: readonly Point[]): Contour {
  const [first, last] = [points[0], points.at(-1)];
  return points.length > 3 && first !== undefined && last !== undefined && distance(first, last) < MEET
    ? polygon(points.slice(0, -1))
    : { kind: 'path', vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

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
