import Document from 'pdfkit';
import type { PaperDocument } from '../page/types.ts';
import { BOLD, REGULAR, type PaperFonts } from './fonts.ts';

/** pdfkit's document. */
export type Pdf = InstanceType<typeof Document>;

/** The day of a document that has none. */
const NO_DAY = '2000-01-01';

/**
 * A document without pages, with our fonts and none of the built-in ones. Uncompressed: the bytes are then
 * the same whichever engine runs this, which deflate libraries do not promise.
 */
export function openDocument(
  { title, language, date }: Omit<PaperDocument, 'pages'>,
  fonts: PaperFonts,
): Pdf {
  const pdf = new Document({
    autoFirstPage: false,
    compress: false,
    displayTitle: true,
    font: '',
    lang: language,
    pdfVersion: '1.7',
    info: {
      Title: title,
      Creator: 'Overhang',
      Producer: 'Overhang, with pdfkit',
      CreationDate: new Date(`${date ?? NO_DAY}T00:00:00Z`),
    },
  });
  pdf.registerFont(REGULAR, fontSource(fonts.regular));
  pdf.registerFont(BOLD, fontSource(fonts.bold));
  return pdf;
}

/** A whole buffer of its own: a view into a larger one would hand over what surrounds it. */
const fontSource = (bytes: Uint8Array): Uint8Array => Uint8Array.from(bytes);
