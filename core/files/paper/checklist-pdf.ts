import type { Outcome } from '../../findings/finding.ts';
import type { Order } from '../../order/types.ts';
import { checklistPages } from './checklist/checklist-pages.ts';
import type { PaperSetup } from './instructions/types.ts';
import { orderText } from './order-text.ts';
import type { PaperDocument } from './page/types.ts';
import type { PaperFonts } from './pdf/fonts.ts';
import { measureText } from './pdf/measure-text.ts';
import { missingGlyphs } from './pdf/missing-glyphs.ts';
import { writePdf } from './pdf/write-pdf.ts';
import { EN, type PaperWords } from './words/en.ts';

export interface ChecklistRequest {
  readonly order: Order;
  /** From `groupSetups`. */
  readonly setups: readonly PaperSetup[];
  readonly fonts: PaperFonts;
  readonly words?: PaperWords;
}

/** The bytes of an order's checklist: a line to tick for every drawer. */
export async function checklistPdf({
  order,
  setups,
  fonts,
  words = EN,
}: ChecklistRequest): Promise<Outcome<Uint8Array>> {
  const document: PaperDocument = {
    title: words.checklist.title(order.name),
    language: words.language,
    ...(order.date === undefined ? {} : { date: order.date }),
    pages: checklistPages(setups, orderText(order), words, measureText(fonts)),
  };
  return { value: await writePdf(document, fonts), findings: missingGlyphs(document, fonts) };
}
