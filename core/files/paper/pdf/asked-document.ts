import type { PaperFonts } from './fonts.ts';
import { openDocument, type Pdf } from './open-document.ts';

/** Fonts take long to open, and every sheet of an order asks the same ones. */
const opened = new WeakMap<PaperFonts, Pdf>();

/** A document that is never written: its fonts are asked for widths and letters. */
export function askedDocument(fonts: PaperFonts): Pdf {
  const pdf = opened.get(fonts) ?? openDocument({ title: '', language: 'en' }, fonts);
  opened.set(fonts, pdf);
  return pdf;
}
