import { INCH } from '../../../units/inch-fraction.ts';
import { line, point, text } from '../page/draw.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';

/** mm. Where both bars begin, in the inside of a page. */
const BARS_AT = point(3, 7);

/** mm and inches that the bars show (requirement PDF-4). */
const BAR = { mm: 100, inches: 4 } as const;

/** mm. Marks at every 10 mm and half inch, longer at the ends, and the longest 100 mm and 4 in. */
const MARK = { small: 1.2, end: 2.6 } as const;

/**
 * Two bars from one corner, across and up, that must measure 100 mm from end mark to end mark, with marks at
 * 4 in on their other side.
 */
export function scaleBars(words: PaperWords): readonly PaperItem[] {
  const across = (along: number, off: number) => point(BARS_AT.x + along, BARS_AT.y + off);
  const up = (along: number, off: number) => point(BARS_AT.x + off, BARS_AT.y + along);
  const { x, y } = BARS_AT;
  const end = BAR.inches * INCH + 2;
  return [
    ...bar(across),
    ...bar(up),
    text(words.bars.mm, point(x + end, y + 0.5), 2.6, { bold: true }),
    text(words.bars.inches, point(x + end, y - 2.4), 2.6, { bold: true }),
    text(words.bars.both, point(x + 1, y + end), 2.6, { bold: true, angle: 90 }),
  ];
}

function bar(at: (along: number, off: number) => ReturnType<typeof point>): readonly PaperItem[] {
  const mark = (along: number, off: number) => line(at(along, 0), at(along, off), STROKES.thin);
  const steps = (count: number) => Array.from({ length: count - 1 }, (_, index) => index + 1);
  return [
    // From end mark to end mark: this line is 100 mm long, and the rest up to 4 in is a line of its own.
    line(at(0, 0), at(BAR.mm, 0), STROKES.thin),
    line(at(BAR.mm, 0), at(BAR.inches * INCH, 0), STROKES.faint),
    mark(0, MARK.end),
    mark(BAR.mm, MARK.end),
    ...steps(BAR.mm / 10).map((step) => mark(step * 10, MARK.small)),
    mark(0, -MARK.end),
    mark(BAR.inches * INCH, -MARK.end),
    ...steps(BAR.inches * 2).map((step) => mark((step * INCH) / 2, -MARK.small)),
  ];
}
