import type { Outcome } from '../../findings/finding.ts';
import type { Order } from '../../order/types.ts';
import { setupPage } from './instructions/setup-page.ts';
import type { PaperSetup, SeatPicture } from './instructions/types.ts';
import { orderText } from './order-text.ts';
import type { PaperDocument } from './page/types.ts';
import type { PaperFonts } from './pdf/fonts.ts';
import { measureText } from './pdf/measure-text.ts';
import { missingGlyphs } from './pdf/missing-glyphs.ts';
import { writePdf, type Progress } from './pdf/write-pdf.ts';
import { EN, type PaperWords } from './words/en.ts';

export interface InstructionsRequest {
  readonly order: Order;
  /** From `groupSetups`. */
  readonly setups: readonly PaperSetup[];
  /** Drawn by whoever has the scene; a jig without a picture has its words only. */
  readonly pictureOf?: SeatPicture;
  readonly fonts: PaperFonts;
  readonly words?: PaperWords;
  readonly progress?: Progress;
}

/** The bytes of an order's instructions, a page for each setup; null when there is none. */
export async function instructionsPdf(request: InstructionsRequest): Promise<Outcome<Uint8Array | null>> {
  const { fonts, progress } = request;
  const document = instructionsDocument(request);
  if (document.pages.length === 0) return { value: null, findings: [] };
  return { value: await writePdf(document, fonts, progress), findings: missingGlyphs(document, fonts) };
}

/** The same as pages of plain data. */
function instructionsDocument({
  order,
  setups,
  pictureOf = () => null,
  fonts,
  words = EN,
}: Omit<InstructionsRequest, 'progress'>): PaperDocument {
  const measure = measureText(fonts);
  const all = { of: setups.length, order: orderText(order), pictureOf, words, measure };
  return {
    title: words.sheets.title(order.name),
    language: words.language,
    ...(order.date === undefined ? {} : { date: order.date }),
    pages: setups.map((setup) => setupPage({ ...all, setup })),
  };
}
