import { box } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { Box, PaperItem } from '../page/types.ts';
import type { Tile, Tiling } from './tile.ts';

/** mm. Room for the small map at the foot of a page. */
export const MINI_MAP = { w: 26, h: 17 } as const;

/** Where a page is among its neighbours: all of them as boxes, this one dark. Tiles left out are missing. */
export function miniMap({ columns, rows, tiles }: Tiling, here: Tile, into: Box): readonly PaperItem[] {
  const { w, h } = here.shows;
  const by = Math.min(into.w / (columns * w), into.h / (rows * h));
  const [cw, ch] = [w * by, h * by];
  const left = into.x + into.w - columns * cw;
  const top = into.y + into.h;
  return tiles.map((tile) =>
    box(
      { x: left + tile.column * cw, y: top - (tile.row + 1) * ch, w: cw, h: ch },
      STROKES.thin,
      tile.id === here.id ? 0.25 : 1,
    ),
  );
}
