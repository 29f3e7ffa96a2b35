import { EDGES, type Edge } from '../../../order/types.ts';
import { formatLength } from '../../../units/format-length.ts';
import { arrow, box, line, point, text } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem, TextWidth } from '../page/types.ts';
import { pullMarks } from '../template/pull-marks.ts';
import { screwMarks } from '../template/screw-marks.ts';
import { templateGeometry } from '../template/template-geometry.ts';
import type { PaperWords } from '../words/en.ts';
import type { SetupMember } from './types.ts';

/** mm. Words, what is between them and the lines, and the arrow below with its words. */
const SIZE = 3;
const GAP = 1.2;
const ARROW = 9;

/** A drawer seen on the back of its front, small: front, box, screws and pull, the overhangs, the cabinet's left. */
export function backView(
  { fit, fastening }: SetupMember,
  into: Box,
  words: PaperWords,
  measure: TextWidth,
): readonly PaperItem[] {
  const { face, box: onFront } = templateGeometry(fit);
  const lengths = {
    left: formatLength(fit.overhang.left, fit.unit),
    right: formatLength(fit.overhang.right, fit.unit),
    bottom: formatLength(fit.overhang.bottom, fit.unit),
    top: formatLength(fit.overhang.top, fit.unit),
  };
  const beside = Math.max(measure(lengths.left, SIZE, true), measure(lengths.right, SIZE, true)) + GAP;
  const above = SIZE + GAP;
  const by = Math.min((into.w - 2 * beside) / face.w, (into.h - 2 * above - ARROW) / face.h);
  const small = ({ x, y, w, h }: Box): Box => ({ x: at.x + x * by, y: at.y + y * by, w: w * by, h: h * by });
  const high = face.h * by + 2 * above + ARROW;
  const at = point(into.x + (into.w - face.w * by) / 2, into.y + (into.h - high) / 2 + ARROW + above);
  const [front, drawer] = [small(face), small(onFront)];
  const middle = front.x + front.w / 2;
  const arrowAt = front.y - above - 2.5;
  return [
    box(front, STROKES.cut, 1),
    box(drawer, STROKES.cut, 0.92),
    ...(fastening === null
      ? []
      : [
          {
            kind: 'group' as const,
            origin: at,
            scale: { x: by, y: by },
            items: [...screwMarks(fastening), ...pullMarks(fastening)],
          },
        ]),
    ...EDGES.flatMap((edge) => overhangItems(edge, lengths[edge], front, drawer)),
    ...(drawer.h > 2.5 * SIZE
      ? [text(words.sheets.box, point(middle, drawer.y + GAP), SIZE, { anchor: 'middle' })]
      : []),
    ...arrow(point(middle - 14, arrowAt), point(middle + 14, arrowAt), 3.5, STROKES.strong),
    text(words.template.handed[0] ?? '', point(middle, arrowAt - SIZE - GAP), SIZE, {
      anchor: 'middle',
      bold: true,
    }),
  ];
}

/** The overhang's length outside its edge, with a line from the front's edge to the box. */
function overhangItems(edge: Edge, length: string, front: Box, drawer: Box): readonly PaperItem[] {
  const [cx, cy] = [front.x + front.w / 2, front.y + front.h / 2];
  const [right, top] = [front.x + front.w, front.y + front.h];
  const low = cy - SIZE * 0.35;
  const of = {
    right: [point(front.x, cy), point(drawer.x, cy), point(front.x - GAP, low), 'end'],
    left: [point(right, cy), point(drawer.x + drawer.w, cy), point(right + GAP, low), 'start'],
    bottom: [point(cx, front.y), point(cx, drawer.y), point(cx, front.y - GAP - SIZE * 0.7), 'middle'],
    top: [point(cx, top), point(cx, drawer.y + drawer.h), point(cx, top + GAP), 'middle'],
  } as const;
  const [from, to, place, anchor] = of[edge];
  return [line(from, to, STROKES.strong), text(length, place, SIZE, { anchor, bold: true })];
}
