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

/** Shares of an edge at which its label may stand, the best first. */
const SHARES = [0.5, 0.4, 0.6, 0.32, 0.68, 0.25, 0.75, 0.18, 0.82] as const;

export interface Labelled {
  readonly lines: readonly PaperItem[];
  readonly notes: readonly Note[];
}

/** The four overhangs, each measured from the front's edge to the box, with its words just inside the box. */
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
    const candidates = SHARES.map((share) => labelBox(edge, share, fit, long));
    const [first] = candidates;
    const place = findRoom(candidates, obstacles, rooms) ??
      findClear(candidates, obstacles) ??
      first ?? { x: 0, y: 0, w: 0, h: 0 };
    return { lines: measureLine(edge, place, fit), note: { box: place, items: wordsIn(edge, place, label) } };
  });
  return { lines: labels.flatMap(({ lines }) => lines), notes: labels.map(({ note }) => note) };
}

const upright = (edge: Edge): boolean => edge === 'left' || edge === 'right';

/** The words of an edge: along it, inside the box. The cabinet's left is at the right of the back view. */
function labelBox(edge: Edge, share: number, fit: DrawerFit, long: number): Box {
  const { box } = templateGeometry(fit);
  const high = SIZE + OFF;
  if (upright(edge)) {
    const y = box.y + box.h * share - long / 2;
    return { x: edge === 'right' ? box.x : box.x + box.w - high, y, w: high, h: long };
  }
  const x = box.x + box.w * share - long / 2;
  return { x, y: edge === 'bottom' ? box.y : box.y + box.h - high, w: long, h: high };
}

function wordsIn(edge: Edge, { x, y, w, h }: Box, label: string): readonly PaperItem[] {
  const base = {
    right: point(x + w, y + h / 2),
    left: point(x + w - OFF, y + h / 2),
    bottom: point(x + w / 2, y + OFF),
    top: point(x + w / 2, y + h - SIZE * 0.75 - OFF / 2),
  }[edge];
  return [text(label, base, SIZE, { anchor: 'middle', bold: true, angle: upright(edge) ? 90 : 0 })];
}

/** From the face's outline to the box, with a slanted tick at both ends, which serves the least overhang too. */
function measureLine(edge: Edge, place: Box, fit: DrawerFit): readonly PaperItem[] {
  const { box, face } = templateGeometry(fit);
  // Beside the words, so that its tick is not on them.
  const [px, py] = [place.x - 1.5, place.y - 1.5];
  const [from, to] = (
    {
      right: [point(face.x, py), point(box.x, py)],
      left: [point(face.x + face.w, py), point(box.x + box.w, py)],
      bottom: [point(px, face.y), point(px, box.y)],
      top: [point(px, face.y + face.h), point(px, box.y + box.h)],
    } as const
  )[edge];
  const tick = ({ x, y }: { readonly x: number; readonly y: number }) =>
    line(point(x - 1.2, y - 1.2), point(x + 1.2, y + 1.2), STROKES.cut);
  return [line(from, to, STROKES.thin), tick(from), tick(to)];
}
