import type { TextWidth } from '../page/types.ts';
import { BOLD, REGULAR, type PaperFonts } from './fonts.ts';
import { openDocument } from './open-document.ts';

/** Fonts take long to open, and every sheet of an order asks for the same ones. */
const opened = new WeakMap<PaperFonts, TextWidth>();

/** Widths of text in mm, as the fonts themselves have it. */
export function measureText(fonts: PaperFonts): TextWidth {
  const known = opened.get(fonts) ?? widthsOf(fonts);
  opened.set(fonts, known);
  return known;
}

function widthsOf(fonts: PaperFonts): TextWidth {
  const pdf = openDocument({ title: '', language: 'en' }, fonts);
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
