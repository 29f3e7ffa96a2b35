import { EDGES, type Edge } from '../../../order/types.ts';
import { formatLength } from '../../../units/format-length.ts';
import { arrow, box, line, point, text } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperDrawing, PaperItem } from '../page/types.ts';
import { pullMarks } from '../template/pull-marks.ts';
import { screwMarks } from '../template/screw-marks.ts';
import { templateGeometry } from '../template/template-geometry.ts';
import type { PaperWords } from '../words/en.ts';
import type { SetupMember } from './types.ts';

/** Room beside the front and below it for words, as shares of its width. */
const AIR = { x: 0.26, y: 0.13 } as const;

/** The back view of a drawer, to be drawn small: front, box, screws and pull, the overhangs, the cabinet's left. */
export function backView({ fit, fastening }: SetupMember, words: PaperWords): PaperDrawing {
  const geometry = templateGeometry(fit);
  const { face, box: onFront } = geometry;
  const [beside, air] = [face.w * AIR.x, face.w * AIR.y];
  return {
    frame: { x: -beside, y: -2.4 * air, w: face.w + 2 * beside, h: face.h + 3.4 * air },
    items: [
      box(face, STROKES.cut, 1),
      box(onFront, STROKES.cut, 0.92),
      ...(fastening === null ? [] : [...screwMarks(fastening), ...pullMarks(fastening)]),
      ...EDGES.flatMap((edge) =>
        overhangItems(edge, formatLength(fit.overhang[edge], fit.unit), face, onFront, air),
      ),
      ...arrow(
        point(face.w * 0.25, -1.35 * air),
        point(face.w * 0.75, -1.35 * air),
        face.w * 0.05,
        STROKES.cut,
      ),
      text(words.template.handed[0] ?? '', point(face.w / 2, -2.2 * air), 2.6, {
        anchor: 'middle',
        bold: true,
      }),
    ],
  };
}

/** The overhang's length outside its edge, with a line from the front's edge to the box. */
function overhangItems(
  edge: Edge,
  length: string,
  face: Box,
  onFront: Box,
  air: number,
): readonly PaperItem[] {
  const [cx, cy] = [face.w * 0.5, face.h / 2];
  const gap = air * 0.12;
  const of = {
    right: [point(0, cy), point(onFront.x, cy), point(-gap, cy), 'end'],
    left: [point(face.w, cy), point(onFront.x + onFront.w, cy), point(face.w + gap, cy), 'start'],
    bottom: [point(cx, 0), point(cx, onFront.y), point(cx, -air * 0.75), 'middle'],
    top: [point(cx, face.h), point(cx, onFront.y + onFront.h), point(cx, face.h + gap), 'middle'],
  } as const;
  const [from, to, at, anchor] = of[edge];
  return [line(from, to, STROKES.strong), text(length, at, 2.8, { anchor, bold: true })];
}
