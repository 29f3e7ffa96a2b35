import type { Point } from '../../../geometry/types.ts';
import { EDGES, type Edge } from '../../../order/types.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import { formatLength } from '../../../units/format-length.ts';
import { line, point, text } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, Note, PaperItem, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import { findClear, findRoom } from './find-place.ts';
import { templateGeometry } from './template-geometry.ts';

/** mm. Size of the words, and what is between them and the box's edge. */
const SIZE = 3.6;
const OFF = 1.6;

/** mm. The smallest that words may become to stand beside their line. */
const SMALLEST = 2.9;

/** Shares of an edge at which its label may stand, the best first. */
const SHARES = [0.5, 0.4, 0.6, 0.32, 0.68, 0.25, 0.75, 0.18, 0.82] as const;

export interface Labelled {
  readonly lines: readonly PaperItem[];
  readonly notes: readonly Note[];
}

/** Where the words of an overhang stand, and the line that measures it. */
interface Place {
  readonly box: Box;
  /** Of the words, on their base line, in their middle. */
  readonly at: Point;
  readonly angle: 0 | 90;
  readonly size: number;
  /** Where along its edge the line runs. */
  readonly line: number;
}

/**
 * The four overhangs, each measured from the front's edge to the box, with its words beside the line, or just inside
 * the box where the overhang is too narrow for them.
 */
export function overhangLabels(
  fit: DrawerFit,
  obstacles: readonly Box[],
  rooms: readonly Box[],
  words: PaperWords,
  measure: TextWidth,
): Labelled {
  const labels = EDGES.map((edge) => {
    const label = `${words.edges[edge]} ${formatLength(fit.overhang[edge], fit.unit)}`;
    const long = measure(label, SIZE, true) + 2;
    const [outside, inside] = [besideLine(edge, fit, long), insideBox(edge, fit, long)];
    const candidates = [...outside, ...inside];
    const boxes = candidates.map(({ box }) => box);
    const found = findRoom(boxes, obstacles, rooms) ?? findClear(boxes, obstacles) ?? inside[0]?.box;
    const place = candidates.find(({ box }) => box === found);
    if (place === undefined) throw new RangeError('overhangLabels: no places');
    const { box, at, angle, size } = place;
    const items = [text(label, at, size, { anchor: 'middle', bold: true, angle })];
    return { lines: measureLine(edge, place.line, fit), note: { box, items } };
  });
  return { lines: labels.flatMap(({ lines }) => lines), notes: labels.map(({ note }) => note) };
}

const upright = (edge: Edge): boolean => edge === 'left' || edge === 'right';

/** Level words between the front's edge and the box: above the line of a side, beside that of bottom or top. */
function besideLine(edge: Edge, fit: DrawerFit, long: number): readonly Place[] {
  const { box, back } = templateGeometry(fit);
  const [right, top] = [box.x + box.w, box.y + box.h];
  const from = { right: back.x, left: right, bottom: back.y, top }[edge];
  const to = { right: box.x, left: back.x + back.w, bottom: box.y, top: back.y + back.h }[edge];
  const size = upright(edge) ? Math.min(SIZE, (SIZE * (to - from - OFF)) / long) : SIZE;
  if (size < SMALLEST || to - from < size + 2 * OFF) return [];
  const middle = (from + to) / 2;
  return SHARES.map((share): Place => {
    if (upright(edge)) {
      const w = (long * size) / SIZE;
      const line = box.y + box.h * share - SIZE / 2;
      const at = { x: middle, y: line + OFF };
      return { box: { x: middle - w / 2, y: line + 0.6, w, h: size + 1 }, at, angle: 0, size, line };
    }
    const line = box.x + box.w * share - long / 2 - 1.5;
    const at = { x: line + 1.5 + long / 2, y: middle - SIZE * 0.35 };
    return { box: { x: line + 1, y: at.y - 0.8, w: long + 1, h: SIZE + 0.8 }, at, angle: 0, size, line };
  });
}

/** Words along an edge, inside the box. The cabinet's left is at the right of the back view. */
function insideBox(edge: Edge, fit: DrawerFit, long: number): readonly Place[] {
  const { box } = templateGeometry(fit);
  const high = SIZE + OFF;
  return SHARES.map((share): Place => {
    if (upright(edge)) {
      const y = box.y + box.h * share - long / 2;
      const x = edge === 'right' ? box.x : box.x + box.w - high;
      const base = edge === 'right' ? x + high : x + high - OFF;
      // The line runs beside the words, so that its tick is not on them.
      return {
        box: { x, y, w: high, h: long },
        at: { x: base, y: y + long / 2 },
        angle: 90,
        size: SIZE,
        line: y - 1.5,
      };
    }
    const x = box.x + box.w * share - long / 2;
    const y = edge === 'bottom' ? box.y : box.y + box.h - high;
    const base = edge === 'bottom' ? y + OFF : y + high - SIZE * 0.75 - OFF / 2;
    return {
      box: { x, y, w: long, h: high },
      at: { x: x + long / 2, y: base },
      angle: 0,
      size: SIZE,
      line: x - 1.5,
    };
  });
}

/** From the face's outline to the box, with a slanted tick at both ends, which serves the least overhang too. */
function measureLine(edge: Edge, at: number, fit: DrawerFit): readonly PaperItem[] {
  const { box, face } = templateGeometry(fit);
  const [from, to] = (
    {
      right: [point(face.x, at), point(box.x, at)],
      left: [point(face.x + face.w, at), point(box.x + box.w, at)],
      bottom: [point(at, face.y), point(at, box.y)],
      top: [point(at, face.y + face.h), point(at, box.y + box.h)],
    } as const
  )[edge];
  const tick = ({ x, y }: Point) => line(point(x - 1.2, y - 1.2), point(x + 1.2, y + 1.2), STROKES.cut);
  return [line(from, to, STROKES.thin), tick(from), tick(to)];
}
