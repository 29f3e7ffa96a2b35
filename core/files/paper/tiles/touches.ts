import { flatten } from '../../../geometry/flatten.ts';
import { segmentsOf } from '../../../geometry/segments.ts';
import type { Contour, Point } from '../../../geometry/types.ts';
import type { Box, PaperItem, TextItem, TextWidth } from '../page/types.ts';

/** mm. Arcs count as chords this near to them. */
const FLATNESS = 0.05;

/** Whether any line or letter of the items lies in a box, mm. A fill counts by its outline. */
export const touches = (items: readonly PaperItem[], box: Box, measure: TextWidth): boolean =>
  items.some((item) => {
    if (item.kind === 'contour') return item.contours.some((contour) => contourTouches(contour, box));
    if (item.kind === 'text') return pathTouches(textFrame(item, measure), box);
    const { origin, scale, items: inner } = item;
    const within = {
      x: (box.x - origin.x) / scale.x,
      y: (box.y - origin.y) / scale.y,
      w: box.w / scale.x,
      h: box.h / scale.y,
    };
    return touches(inner, within, measure);
  });

function contourTouches(contour: Contour, box: Box): boolean {
  const segments = segmentsOf(contour);
  const last = segments.at(-1);
  const points = segments.flatMap((segment) => flatten(segment, FLATNESS));
  return pathTouches(last === undefined ? points : [...points, last.end], box);
}

/** The corners of a text's base line and cap height, and the line across, so that no box falls between them. */
function textFrame({ text, at, size, anchor, angle }: TextItem, measure: TextWidth): readonly Point[] {
  const width = measure(text, size, true);
  const start = -width * { start: 0, middle: 0.5, end: 1 }[anchor];
  const turn = (angle * Math.PI) / 180;
  const corner = (along: number, up: number): Point => ({
    x: at.x + along * Math.cos(turn) - up * Math.sin(turn),
    y: at.y + along * Math.sin(turn) + up * Math.cos(turn),
  });
  return [corner(start, 0), corner(start + width, 0), corner(start + width, size), corner(start, size)];
}

const pathTouches = (points: readonly Point[], box: Box): boolean =>
  points.some((end, index) => lineTouches(points[index - 1] ?? end, end, box));

/** Whether a straight line has any point in a box: the stretch of it within each pair of sides. */
function lineTouches(from: Point, to: Point, { x, y, w, h }: Box): boolean {
  const across = stretch(from.x, to.x, x, x + w);
  const up = stretch(from.y, to.y, y, y + h);
  return Math.max(0, across[0], up[0]) <= Math.min(1, across[1], up[1]);
}

/** The shares of a line between which one coordinate is between two values. */
function stretch(from: number, to: number, least: number, most: number): readonly [number, number] {
  if (from === to) return from >= least && from <= most ? [0, 1] : [1, 0];
  const [a, b] = [(least - from) / (to - from), (most - from) / (to - from)];
  return a < b ? [a, b] : [b, a];
}
