import { circle as circleContour } from '../../../geometry/circle.ts';
import { rectangle } from '../../../geometry/rectangle.ts';
import type { Contour, PathContour, Point } from '../../../geometry/types.ts';
import { STROKES } from './strokes.ts';
import type { Box, ContourItem, GroupItem, PaperItem, Stroke, TextItem } from './types.ts';

/** Shorthands for items; coordinates in mm. */
export const point = (x: number, y: number): Point => ({ x, y });

export const outline = (contour: Contour, stroke: Stroke, fill?: number): ContourItem => ({
  kind: 'contour',
  contours: [contour],
  stroke,
  ...(fill === undefined ? {} : { fill }),
});

/** The open line through points. */
export const polyline = (points: readonly Point[], stroke: Stroke): ContourItem =>
  outline(openPath(points), stroke);

export const line = (from: Point, to: Point, stroke: Stroke): ContourItem => polyline([from, to], stroke);

export const box = ({ x, y, w, h }: Box, stroke: Stroke, fill?: number): ContourItem =>
  outline(rectangle(w, h, { x, y }), stroke, fill);

export const circle = (center: Point, radius: number, stroke: Stroke, fill?: number): ContourItem =>
  outline(circleContour(center, radius), stroke, fill);

/** A filled polygon without a line. */
export const filled = (points: readonly Point[], grey: number): ContourItem => ({
  kind: 'contour',
  contours: [{ kind: 'ring', vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) }],
  fill: grey,
});

export const text = (
  words: string,
  at: Point,
  size: number,
  rest: Partial<Pick<TextItem, 'anchor' | 'angle' | 'bold' | 'grey' | 'halo'>> = {},
): TextItem => ({
  kind: 'text',
  text: words,
  at,
  size,
  anchor: 'start',
  angle: 0,
  bold: false,
  grey: 0,
  halo: false,
  ...rest,
});

/** Items moved by a vector. */
export const moved = (items: readonly PaperItem[], by: Point): GroupItem => ({
  kind: 'group',
  origin: by,
  scale: { x: 1, y: 1 },
  items,
});

/** An upright cross with arms of a length. */
export const cross = ({ x, y }: Point, arm: number, stroke: Stroke = STROKES.thin): readonly PaperItem[] => [
  line(point(x - arm, y), point(x + arm, y), stroke),
  line(point(x, y - arm), point(x, y + arm), stroke),
];

/** A line with a filled head of a length at its end. */
export function arrow(from: Point, to: Point, head: number, stroke: Stroke): readonly PaperItem[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length === 0) throw new RangeError('arrow: it has no length');
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const back = point(to.x - ux * head, to.y - uy * head);
  const half = head * 0.3;
  return [
    line(from, back, stroke),
    filled(
      [to, point(back.x - uy * half, back.y + ux * half), point(back.x + uy * half, back.y - ux * half)],
      stroke.grey,
    ),
  ];
}

const openPath = (points: readonly Point[]): PathContour => ({
  kind: 'path',
  vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })),
});
