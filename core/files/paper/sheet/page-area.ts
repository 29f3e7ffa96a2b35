import type { Box, GroupItem, PaperItem } from '../page/types.ts';
import type { PaperSettings } from './settings.ts';
import type { SheetSize } from './sheet-sizes.ts';

/**
 * A page and what is inside its margins, measured on the printed paper: lengths in the inside are true there,
 * and the printer's factors are what they are multiplied with on their way into the file. All in mm.
 *
 *     ┌───────────────────┐
 *     │ · · · top band · ·│   bands: room for match marks, the ids of neighbours,
 *     │ ·┌───────────────┐│   the two bars and the words
 *     │ ·│    window     ││
 *     │ ·└───────────────┘│
 *     │ bars, words, map  │
 *     └───────────────────┘
 */
export interface PageArea {
  readonly page: SheetSize;
  readonly inside: { readonly w: number; readonly h: number };
  /** Where a drawing or a tile of it goes, in the inside's coordinates. */
  readonly window: Box;
  /** Puts what is in the inside's coordinates on the page. */
  readonly place: (items: readonly PaperItem[]) => GroupItem;
}

/** mm. Room round the window. */
const BANDS = { left: 9, right: 5, top: 5, bottom: 24 } as const;

/** The area of a page of this size; its factors follow the paper, so a page on its side swaps them. */
export function pageArea(page: SheetSize, { margin, factors }: PaperSettings): PageArea {
  const upright = page.width <= page.height;
  const scale = upright ? factors : { x: factors.y, y: factors.x };
  const inside = { w: (page.width - 2 * margin) / scale.x, h: (page.height - 2 * margin) / scale.y };
  return {
    page,
    inside,
    window: {
      x: BANDS.left,
      y: BANDS.bottom,
      w: inside.w - BANDS.left - BANDS.right,
      h: inside.h - BANDS.top - BANDS.bottom,
    },
    place: (items) => ({ kind: 'group', origin: { x: margin, y: margin }, scale, items }),
  };
}

/** A page whose window is just so large, mm. */
export function areaRound(w: number, h: number, settings: PaperSettings): PageArea {
  const { margin, factors } = settings;
  const inside = { w: w + BANDS.left + BANDS.right, h: h + BANDS.top + BANDS.bottom };
  const sized = (scale: { readonly x: number; readonly y: number }): SheetSize => ({
    width: inside.w * scale.x + 2 * margin,
    height: inside.h * scale.y + 2 * margin,
  });
  const upright = sized(factors);
  const turned = sized({ x: factors.y, y: factors.x });
  return pageArea(upright.width <= upright.height ? upright : turned, settings);
}
