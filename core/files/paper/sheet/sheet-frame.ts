import { point, text } from '../page/draw.ts';
import { shorten } from '../page/shorten.ts';
import type { PaperItem, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import type { PageArea } from './page-area.ts';
import { scaleBars } from './scale-bars.ts';
import type { PaperSettings } from './settings.ts';

export interface FrameOf {
  readonly area: PageArea;
  /** What the page is called: `F3-B2`. */
  readonly id: string;
  /** What it is for, and of which order. */
  readonly about: string;
  /** mm at the right of the foot that are left free. */
  readonly free: number;
  readonly settings: PaperSettings;
  readonly words: PaperWords;
  readonly measure: TextWidth;
}

/** mm. Sizes of the words about scale. */
export const PRINT_TRUE = 2.9;
const FOOT = 2.7;

/** What stands at the foot of every page that is to scale: its id, what to print it at, and the two bars. */
export function sheetFrame({
  area,
  id,
  about,
  free,
  settings,
  words,
  measure,
}: FrameOf): readonly PaperItem[] {
  const width = area.inside.w - free;
  const idWidth = measure(id, 4.2, true) + 3;
  const right = 121;
  return [
    ...scaleBars(words),
    text(id, point(7, 16.4), 4.2, { bold: true }),
    text(shorten(about, width - 7 - idWidth, 2.9, measure), point(7 + idWidth, 16.4), 2.9),
    text(shorten(words.printTrue, width - 7, PRINT_TRUE, measure), point(7, 11.9), PRINT_TRUE),
    ...words
      .foot(settings.factors)
      .map((line, index) =>
        text(shorten(line, width - right, FOOT, measure), point(right, 7.4 - index * 3.4), FOOT),
      ),
  ];
}
