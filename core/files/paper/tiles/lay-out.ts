import type { Outcome } from '../../../findings/finding.ts';
import { error } from '../../../findings/make.ts';
import { mmText } from '../../../units/mm-text.ts';
import type { PaperDrawing, TextWidth } from '../page/types.ts';
import { areaRound, pageArea, type PageArea } from '../sheet/page-area.ts';
import { PAPER_LIMITS, type PaperSettings } from '../sheet/settings.ts';
import { SHEET_SIZES } from '../sheet/sheet-sizes.ts';
import { tileDrawing, type Tiling } from './tile.ts';

/** A drawing on pages that are all alike. */
export interface Layout {
  readonly area: PageArea;
  readonly tiling: Tiling;
}

/**
 * The pages of a drawing, turned upright or on their side, whichever needs fewer; upright where both need
 * the same (requirement PDF-5). Null where a single page would be longer than a PDF page may be.
 */
export function layOut(
  drawing: PaperDrawing,
  settings: PaperSettings,
  measure: TextWidth,
): Outcome<Layout | null> {
  const { sheet, overlap } = settings;
  const onPages = (area: PageArea): Layout => ({
    area,
    tiling: tileDrawing(drawing, area.window, overlap, measure),
  });
  if (sheet === 'as long as needed') {
    const { w, h } = drawing.frame;
    const area = areaRound(
      Math.max(w, PAPER_LIMITS.leastInside),
      Math.max(h, PAPER_LIMITS.leastInside),
      settings,
    );
    const longest = Math.max(area.page.width, area.page.height);
    if (longest <= PAPER_LIMITS.longestSide) return { value: onPages(area), findings: [] };
    const message = `One page for the whole drawing would be ${mmText(longest)} long, and a PDF page has ${mmText(PAPER_LIMITS.longestSide)} at most: choose a sheet, so that it is cut into tiles.`;
    return { value: null, findings: [error('paper/long', message, { field: 'sheet' }, { longest })] };
  }
  const { width, height } = typeof sheet === 'string' ? SHEET_SIZES[sheet] : sheet;
  const upright = onPages(pageArea({ width, height }, settings));
  const turned = onPages(pageArea({ width: height, height: width }, settings));
  const fewer = turned.tiling.tiles.length < upright.tiling.tiles.length;
  return { value: fewer ? turned : upright, findings: [] };
}
