import type { Finding, Outcome } from '../../findings/finding.ts';
import { hasErrors } from '../../findings/make.ts';
import type { Order } from '../../order/types.ts';
import { coverPages } from './cover/cover-pages.ts';
import { mapPages } from './cover/map-pages.ts';
import { missingGlyphs } from './pdf/missing-glyphs.ts';
import type { PaperDocument } from './page/types.ts';
import type { PaperFonts } from './pdf/fonts.ts';
import { measureText } from './pdf/measure-text.ts';
import { writePdf, type Progress } from './pdf/write-pdf.ts';
import { checkPaper } from './sheet/check-paper.ts';
import { pageArea } from './sheet/page-area.ts';
import { frontSheet } from './sheet/front-sheet.ts';
import { sheetText } from './sheet/sheet-text.ts';
import type { PaperSettings } from './sheet/settings.ts';
import { drawTemplate, type DrawnTemplate } from './template/draw-template.ts';
import type { Template } from './template/types.ts';
import { tilePage } from './tiles/tile-page.ts';
import { orderText } from './order-text.ts';
import { usersText } from './template/users-text.ts';
import { EN, type PaperWords } from './words/en.ts';

export interface TemplatesRequest {
  readonly order: Order;
  /** From `groupTemplates`. */
  readonly templates: readonly Template[];
  readonly settings: PaperSettings;
  readonly fonts: PaperFonts;
  readonly words?: PaperWords;
  readonly progress?: Progress;
}

/**
 * The bytes of all true-scale templates of an order: cover with the list of drawers, maps, and the pages.
 * Null when the settings are wrong or there is no template.
 */
export async function templatesPdf(request: TemplatesRequest): Promise<Outcome<Uint8Array | null>> {
  const { value, findings } = templatesDocument(request);
  if (value === null) return { value, findings };
  const bytes = await writePdf(value, request.fonts, request.progress);
  return { value: bytes, findings: [...findings, ...missingGlyphs(value, request.fonts)] };
}

/** The same as pages of plain data. */
function templatesDocument({
  order,
  templates,
  settings,
  fonts,
  words = EN,
}: Omit<TemplatesRequest, 'progress'>): Outcome<PaperDocument | null> {
  const faults = checkPaper(settings);
  if (hasErrors(faults) || templates.length === 0) return { value: null, findings: faults };
  const measure = measureText(fonts);
  const about = orderText(order);
  const findings: Finding[] = [...faults];
  const drawn = templates.flatMap((template): readonly DrawnTemplate[] => {
    const one = drawTemplate(template, about, settings, words, measure);
    findings.push(...one.findings);
    return one.value === null ? [] : [one.value];
  });
  if (hasErrors(findings)) return { value: null, findings };
  const front = { area: pageArea(frontSheet(settings), settings), about, settings, words, measure };
  const pages = [
    ...coverPages(drawn, sheetText(settings, order.unit, words), front),
    ...mapPages(drawn, front),
    ...drawn.flatMap(({ template: { id, users }, drawing, layout: { area, tiling } }) => {
      const frame = { ...front, area, about: words.tiles.about(usersText(users, words), about) };
      return tiling.tiles.map((tile) => tilePage(id, drawing, tile, tiling, frame));
    }),
  ];
  const date = order.date === undefined ? {} : { date: order.date };
  return {
    value: { title: words.templates.title(order.name), language: words.language, ...date, pages },
    findings,
  };
}
