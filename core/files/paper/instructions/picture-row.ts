import { drawerName } from '../../../fit/drawer-name.ts';
import { box, point, text } from '../page/draw.ts';
import { fitDrawing } from '../page/fit-drawing.ts';
import { shorten } from '../page/shorten.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import { backView } from './back-view.ts';
import { membersOf, type PaperSetup, type SeatPicture } from './types.ts';

/** mm. Between pictures, and for the words below each. */
const GAP = 4;
const CAPTION = 5;

/** mm. Words keep their size, so some stand out past the sides of a drawing that is made small. */
const SIDE = 6;

/** The seats of a setup's jigs and the back view of its first drawer, side by side. */
export function pictureRow(
  setup: PaperSetup,
  pictureOf: SeatPicture,
  into: Box,
  words: PaperWords,
  measure: TextWidth,
): readonly PaperItem[] {
  const { jigs } = setup;
  const [first] = membersOf(setup);
  if (first === undefined) return [];
  const seats = jigs.flatMap((jig): readonly Pictured[] => {
    const drawing = pictureOf(first.fit, jig);
    const edges = jig.edges.map((edge) => words.edges[edge]).join(words.and);
    if (drawing === null) return [];
    const draw = ({ x, y, w, h }: Box) => [
      fitDrawing(drawing, { x: x + SIDE, y: y + 2, w: w - 2 * SIDE, h: h - 4 }),
    ];
    return [{ draw, caption: words.sheets.picture(jig.id, edges) }];
  });
  const all: readonly Pictured[] = [
    ...seats,
    {
      draw: ({ x, y, w, h }) => backView(first, { x: x + 2, y: y + 2, w: w - 4, h: h - 4 }, words, measure),
      caption: words.sheets.pictureTemplate(drawerName(first.fit.drawer)),
    },
  ];
  const w = (into.w - GAP * (all.length - 1)) / all.length;
  return all.flatMap(({ draw, caption }, index) => {
    const cell = { x: into.x + index * (w + GAP), y: into.y + CAPTION, w, h: into.h - CAPTION };
    return [
      box(cell, STROKES.rule),
      ...draw(cell),
      text(shorten(caption, w, 3, measure, true), point(cell.x, into.y + 1), 3, { bold: true }),
    ];
  });
}

interface Pictured {
  readonly draw: (cell: Box) => readonly PaperItem[];
  readonly caption: string;
}
