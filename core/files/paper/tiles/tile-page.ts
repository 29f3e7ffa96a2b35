import { arrow, cross, line, point, text } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import { holds, overlaps } from '../page/boxes.ts';
import type { Box, PaperDrawing, PaperItem, PaperPage } from '../page/types.ts';
import { PRINT_TRUE, sheetFrame, type FrameOf } from '../sheet/sheet-frame.ts';
import { matchMarks } from './match-marks.ts';
import { miniMap, MINI_MAP } from './mini-map.ts';
import { neighborsOf, SIDES, type Side } from './neighbors.ts';
import type { Tile, Tiling } from './tile.ts';
import { touches } from './touches.ts';

/** mm. Arms of the crosses. */
const ARM = 3;

/** `F3-B2`, or `F3` for a template that is one page. */
export const pageName = (drawing: string, tile: Tile, tiling: Tiling): string =>
  tiling.tiles.length === 1 ? drawing : `${drawing}-${tile.id}`;

/** The page of one tile of a drawing, at true scale. @param id of the drawing */
export function tilePage(
  id: string,
  drawing: PaperDrawing,
  tile: Tile,
  tiling: Tiling,
  frame: Omit<FrameOf, 'id' | 'free'>,
): PaperPage {
  const { area, words } = frame;
  const { window } = area;
  const shift = point(window.x - tile.shows.x, window.y - tile.shows.y);
  const name = pageName(id, tile, tiling);
  const neighbors = neighborsOf(tile, tiling);
  const sides = new Set(SIDES.filter((side) => neighbors[side] !== undefined));
  const marks = matchMarks(tile.shows, tiling.overlap, sides).flatMap((mark) =>
    cross(point(mark.x + shift.x, mark.y + shift.y), ARM),
  );
  const shown = [
    ...drawing.items.filter((item) => touches([item], tile.shows, frame.measure)),
    ...notesOn(tile, drawing, tiling),
  ];
  const several = tiling.tiles.length > 1;
  return {
    label: name,
    ...area.page,
    items: [
      area.place([
        { kind: 'group', origin: shift, scale: { x: 1, y: 1 }, clip: tile.shows, items: shown },
        ...marks,
        ...[...sides].flatMap((side) =>
          joinMarks(window, side, words.tiles.joins(pageName(id, neighbors[side] ?? tile, tiling))),
        ),
        ...(several ? miniMap(tiling, tile, { x: area.inside.w - MINI_MAP.w, y: 0, ...MINI_MAP }) : []),
        ...leftArrow(area.inside.w - (several ? MINI_MAP.w + 3 : 0), frame),
        ...sheetFrame({ ...frame, id: name, free: several ? MINI_MAP.w + 3 : 0 }),
      ]),
    ],
  };
}

/** Which way the cabinet's left is, at the foot of every page, as far as there is room beside the other words. */
function leftArrow(
  end: number,
  { words, measure }: Pick<FrameOf, 'words' | 'measure'>,
): readonly PaperItem[] {
  const [said = ''] = words.template.handed;
  const [size, y, long] = [3.4, 11.6, 22];
  const start = end - long - measure(said, size, true) - 4;
  if (start < 9 + measure(words.printTrue, PRINT_TRUE, false)) return [];
  const from = start + measure(said, size, true) + 2;
  return [
    text(said, point(start, y), size, { bold: true }),
    ...arrow(point(from, y + 1.2), point(from + long, y + 1.2), 5, STROKES.cut),
  ];
}

/** The notes of a page: those that are whole on it, and those that are whole on none and begin or end on it. */
const notesOn = ({ shows }: Tile, { notes = [] }: PaperDrawing, { tiles }: Tiling): readonly PaperItem[] =>
  notes
    .filter(
      ({ box }) =>
        holds(shows, box) || (overlaps(shows, box) && !tiles.some((tile) => holds(tile.shows, box))),
    )
    .flatMap(({ items }) => items);

/** The edge of the window that a neighbour joins, with its name outside. */
function joinMarks({ x, y, w, h }: Box, side: Side, words: string): readonly PaperItem[] {
  const size = 3;
  const edge = {
    left: [point(x, y), point(x, y + h), point(x - 1.4, y + 0.7 * h), 90],
    right: [point(x + w, y), point(x + w, y + h), point(x + w + 3.6, y + 0.7 * h), 90],
    above: [point(x, y + h), point(x + w, y + h), point(x + 0.3 * w, y + h + 1.4), 0],
    below: [point(x, y), point(x + w, y), point(x + 0.3 * w, y - 3.6), 0],
  } as const;
  const [from, to, at, angle] = edge[side];
  return [line(from, to, STROKES.faint), text(words, at, size, { anchor: 'middle', angle })];
}
