import { polygon } from '../../../geometry/polygon.ts';
import { frameWidths } from '../../../order/frame-widths.ts';
import { box, line, outline, point } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperDrawing, PaperItem } from '../page/types.ts';
import { pullMarks } from './pull-marks.ts';
import { screwMarks } from './screw-marks.ts';
import { templateGeometry } from './template-geometry.ts';
import type { TemplateSource } from './types.ts';

/** What a template shows besides words: where to cut, where to fold, where the box, the screws and the pull go. */
export function templateLines({ fit, fastening }: TemplateSource): PaperDrawing {
  const geometry = templateGeometry(fit);
  const { face, back, box: onFront, strip } = geometry;
  const bevelled = back.x !== face.x;
  return {
    frame: { x: back.x - strip, y: back.y - strip, w: back.w + 2 * strip, h: back.h + 2 * strip },
    items: [
      outline(polygon(cutCorners(back, strip)), STROKES.cut),
      ...(strip > 0 ? [box(back, STROKES.fold)] : []),
      ...(bevelled ? [box(face, STROKES.hidden)] : []),
      ...frameJoints(fit.drawer.front, face),
      box(onFront, STROKES.strong),
      ...[onFront.x + fit.boxSide, onFront.x + onFront.w - fit.boxSide].map((x) =>
        line(point(x, onFront.y), point(x, onFront.y + onFront.h), STROKES.hidden),
      ),
      ...(fastening === null ? [] : [...screwMarks(fastening), ...pullMarks(fastening)]),
    ],
  };
}

/** The paper's outline: a strip along each edge of the back, mitred, so that all four fold down. */
const cutCorners = ({ x, y, w, h }: Box, s: number) =>
  s === 0
    ? [point(x, y), point(x + w, y), point(x + w, y + h), point(x, y + h)]
    : [
        point(x, y),
        point(x + s, y - s),
        point(x + w - s, y - s),
        point(x + w, y),
        point(x + w + s, y + s),
        point(x + w + s, y + h - s),
        point(x + w, y + h),
        point(x + w - s, y + h + s),
        point(x + s, y + h + s),
        point(x, y + h),
        point(x - s, y + h - s),
        point(x - s, y + s),
      ];

/** The inner edges of stiles and rails, so that one sees which wood a screw is in. */
function frameJoints(
  front: TemplateSource['fit']['drawer']['front'],
  { x, y, w, h }: Box,
): readonly PaperItem[] {
  if (front.kind === 'slab') return [];
  const { stile, rail } = frameWidths(front);
  if (w <= 2 * stile || h <= 2 * rail) return [];
  return [box({ x: x + stile, y: y + rail, w: w - 2 * stile, h: h - 2 * rail }, STROKES.faint)];
}
