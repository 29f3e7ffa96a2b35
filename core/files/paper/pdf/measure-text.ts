import type { TextWidth } from '../page/types.ts';
import { askedDocument } from './asked-document.ts';
import { BOLD, REGULAR, type PaperFonts } from './fonts.ts';

/** Words take long to measure, and the sheets of an order have most of them in common. */
const measures = new WeakMap<PaperFonts, TextWidth>();

/** Widths of text in mm, as the fonts themselves have it. */
export function measureText(fonts: PaperFonts): TextWidth {
  const known = measures.get(fonts) ?? widthsOf(fonts);
  measures.set(fonts, known);
  return known;
}

function widthsOf(fonts: PaperFonts): TextWidth {
  const pdf = askedDocument(fonts);
  const known = new Map<string, number>();
  /** At size 1 a width in points is a width in sizes. */
  const widthOf = (text: string, font: string): number => {
    const key = `${font} ${text}`;
    const kept = known.get(key);
    if (kept !== undefined) return kept;
    const width = pdf.font(font).fontSize(1).widthOfString(text);
    known.set(key, width);
    return width;
  };
  return (text, size, bold = false) => size * widthOf(text, bold ? BOLD : REGULAR);
}
