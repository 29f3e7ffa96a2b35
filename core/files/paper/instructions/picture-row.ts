import { drawerName } from '../../../fit/name.ts';
import { box, point, text } from '../page/draw.ts';
import { fitDrawing } from '../page/fit-drawing.ts';
import { shorten } from '../page/shorten.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperDrawing, PaperItem, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import { backView } from './back-view.ts';
import type { PaperSetup, SeatPicture } from './types.ts';

/** mm. Between pictures, and for the words below each. */
const GAP = 4;
const CAPTION = 5;

/** mm. Words keep their size, so some stand out past the sides of a drawing that is made small. */
const SIDE = 6;

/** The seats of a setup's jigs and the back view of its first drawer, side by side. */
export function pictureRow(
  { jigs, members: [first] }: PaperSetup,
  pictureOf: SeatPicture,
  into: Box,
  words: PaperWords,
  measure: TextWidth,
): readonly PaperItem[] {
  if (first === undefined) return [];
  const seats = jigs.flatMap((jig): readonly Pictured[] => {
    const drawing = pictureOf(first.fit, jig);
    const edges = jig.edges.map((edge) => words.edges[edge]).join(words.and);
    return drawing === null ? [] : [{ drawing, caption: words.sheets.picture(jig.id, edges) }];
  });
  const all: readonly Pictured[] = [
    ...seats,
    { drawing: backView(first, words), caption: words.sheets.pictureTemplate(drawerName(first.fit.drawer)) },
  ];
  const w = (into.w - GAP * (all.length - 1)) / all.length;
  return all.flatMap(({ drawing, caption }, index) => {
    const cell = { x: into.x + index * (w + GAP), y: into.y + CAPTION, w, h: into.h - CAPTION };
    return [
      box(cell, STROKES.rule),
      fitDrawing(drawing, { x: cell.x + SIDE, y: cell.y + 2, w: cell.w - 2 * SIDE, h: cell.h - 4 }),
      text(shorten(caption, w, 3, measure, true), point(cell.x, into.y + 1), 3, { bold: true }),
    ];
  });
}

interface Pictured {
  readonly drawing: PaperDrawing;
  readonly caption: string;
}
