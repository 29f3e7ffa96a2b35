import { box, point, text } from '../page/draw.ts';
import { fitDrawing } from '../page/fit-drawing.ts';
import { shorten } from '../page/shorten.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem, PaperPage } from '../page/types.ts';
import { usersText } from '../template/users-text.ts';
import type { DrawnTemplate } from '../template/draw-template.ts';
import { templateLines } from '../template/template-lines.ts';
import { sheetFrame, type FrameOf } from '../sheet/sheet-frame.ts';

/** mm. The least room for one map, and what is between them. */
const CELL = { w: 85, h: 52, gap: 5 } as const;

/** The maps of all templates of more than one page: where each page goes (requirement PDF-3). */
export function mapPages(
  drawn: readonly DrawnTemplate[],
  frame: Omit<FrameOf, 'id' | 'free'>,
): readonly PaperPage[] {
  const { area, words } = frame;
  const { window } = area;
  const heading = 14;
  const tall = window.h - heading;
  const columns = Math.max(1, Math.floor((window.w + CELL.gap) / (CELL.w + CELL.gap)));
  const rows = Math.max(1, Math.floor((tall + CELL.gap) / (CELL.h + CELL.gap)));
  const w = (window.w - CELL.gap * (columns - 1)) / columns;
  const h = (tall - CELL.gap * (rows - 1)) / rows;
  const tiled = drawn.filter(({ layout }) => layout.tiling.tiles.length > 1);
  const count = Math.ceil(tiled.length / (columns * rows));
  return Array.from({ length: count }, (_, index): PaperPage => {
    const label = words.templates.map(index + 1);
    const cells = tiled.slice(index * columns * rows, (index + 1) * columns * rows);
    const top = window.y + window.h;
    return {
      label,
      ...area.page,
      items: [
        area.place([
          text(words.templates.mapHeading, point(window.x, top - 5.5), 5.5, { bold: true }),
          text(words.templates.mapAbout, point(window.x, top - 10.5), 3.2),
          ...cells.flatMap((one, cell) =>
            mapOf(
              one,
              {
                x: window.x + (cell % columns) * (w + CELL.gap),
                y:
                  top -
                  heading -
                  (Math.floor(cell / columns) + 1) * h -
                  Math.floor(cell / columns) * CELL.gap,
                w,
                h,
              },
              frame,
            ),
          ),
          ...sheetFrame({ ...frame, id: label, free: 0 }),
        ]),
      ],
    };
  });
}

/** One template, small, with its pages over it and their ids. */
function mapOf(
  { template, layout: { tiling } }: DrawnTemplate,
  cell: Box,
  { words, measure }: Pick<FrameOf, 'words' | 'measure'>,
): readonly PaperItem[] {
  const idWidth = measure(template.id, 4.2, true) + 2;
  const all = tiling.tiles.map(({ shows }) => shows);
  const [left, low] = [Math.min(...all.map(({ x }) => x)), Math.min(...all.map(({ y }) => y))];
  const frame = {
    x: left,
    y: low,
    w: Math.max(...all.map(({ x, w }) => x + w)) - left,
    h: Math.max(...all.map(({ y, h }) => y + h)) - low,
  };
  return [
    text(template.id, point(cell.x, cell.y + cell.h - 4), 4.2, { bold: true }),
    text(
      shorten(usersText(template.users, words), cell.w - idWidth, 2.8, measure),
      point(cell.x + idWidth, cell.y + cell.h - 4),
      2.8,
    ),
    fitDrawing(
      {
        frame,
        items: [
          ...templateLines({ ...template, fastening: null }).items,
          ...tiling.tiles.flatMap(({ id, shows }) => [
            box(shows, STROKES.faint),
            text(id, point(shows.x + shows.w / 2, shows.y + shows.h / 2), 4, {
              anchor: 'middle',
              bold: true,
              halo: true,
            }),
          ]),
        ],
      },
      { x: cell.x, y: cell.y, w: cell.w, h: cell.h - 6.5 },
      0.5,
    ),
  ];
}
