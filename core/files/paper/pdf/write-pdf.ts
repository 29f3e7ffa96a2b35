import type { PaperDocument } from '../page/types.ts';
import type { PaperFonts } from './fonts.ts';
import { openDocument, type Pdf } from './open-document.ts';
import { paintPage } from './paint.ts';
import { points } from './units.ts';
import { labelPages, printTrue } from './viewer.ts';

/** How many pages are written, of all. */
export type Progress = (done: number, of: number) => void;

/**
 * The bytes of a PDF document: exact page sizes, vector lines, both fonts embedded, no scaling when printed
 * (requirements PDF-1, PDF-2). The same document gives the same bytes.
 */
export async function writePdf(
  document: PaperDocument,
  fonts: PaperFonts,
  progress?: Progress,
): Promise<Uint8Array> {
  const { pages } = document;
  if (pages.length === 0) throw new RangeError('writePdf: the document has no pages');
  const pdf = openDocument(document, fonts);
  const bytes = collect(pdf);
  printTrue(pdf);
  labelPages(pdf, pages);
  for (const [index, { width, height, items }] of pages.entries()) {
    pdf.addPage({ size: [points(width), points(height)], margin: 0 });
    paintPage(pdf, items, height);
    progress?.(index + 1, pages.length);
  }
  pdf.end();
  return bytes;
}

function collect(pdf: Pdf): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.length;
      }
      resolve(whole);
    });
  });
}
