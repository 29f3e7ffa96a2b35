import type { Finding } from '../../../findings/finding.ts';
import { warning } from '../../../findings/make.ts';
import type { PaperDocument, PaperItem } from '../page/types.ts';
import { askedDocument } from './asked-document.ts';
import { REGULAR, type PaperFonts } from './fonts.ts';

/** A warning that names the letters which the font does not have; they are printed as empty boxes. */
export function missingGlyphs({ title, pages }: PaperDocument, fonts: PaperFonts): readonly Finding[] {
  const texts = new Set(pages.flatMap(({ items }) => items.flatMap(textsOf)));
  const letters = new Set([...texts].flatMap((text) => Array.from(text)));
  const has = glyphTest(fonts);
  const missing = [...letters].filter((letter) => !has(letter)).sort();
  if (missing.length === 0) return [];
  const shown = missing.join(' ');
  const message = `${title}: the font has no ${shown}; where it stands, an empty box is printed. Write the names with other letters.`;
  return [warning('paper/letters', message, {}, { missing: shown })];
}

const textsOf = (item: PaperItem): readonly string[] =>
  item.kind === 'text' ? [item.text] : item.kind === 'group' ? item.items.flatMap(textsOf) : [];

/** Asks the font that pdfkit has opened; its types keep that to themselves. */
function glyphTest(fonts: PaperFonts): (letter: string) => boolean {
  const pdf = askedDocument(fonts);
  pdf.font(REGULAR);
  const opened: unknown = Reflect.get(pdf, '_font');
  const font: unknown = typeof opened === 'object' && opened !== null ? Reflect.get(opened, 'font') : null;
  const ask: unknown =
    typeof font === 'object' && font !== null ? Reflect.get(font, 'hasGlyphForCodePoint') : undefined;
  if (typeof ask !== 'function') throw new Error('missingGlyphs: pdfkit has no font to ask');
  return (letter) => Reflect.apply(ask, font, [letter.codePointAt(0)]) === true;
}
