import type { Outcome } from '../../findings/finding.ts';
import { hasErrors } from '../../findings/make.ts';
import type { LengthUnit } from '../../units/unit.ts';
import { calibrationPage } from './calibration/calibration-page.ts';
import type { PaperFonts } from './pdf/fonts.ts';
import { measureText } from './pdf/measure-text.ts';
import { writePdf } from './pdf/write-pdf.ts';
import { checkPaper } from './sheet/check-paper.ts';
import { frontSheet } from './sheet/front-sheet.ts';
import { pageArea } from './sheet/page-area.ts';
import { sheetText } from './sheet/sheet-text.ts';
import type { PaperSettings } from './sheet/settings.ts';
import { EN, type PaperWords } from './words/en.ts';

export interface CalibrationRequest {
  readonly settings: PaperSettings;
  readonly unit: LengthUnit;
  readonly fonts: PaperFonts;
  readonly words?: PaperWords;
}

/** One page whose lines are measured to find the printer's factors; null when the settings are wrong. */
export async function calibrationPdf({
  settings,
  unit,
  fonts,
  words = EN,
}: CalibrationRequest): Promise<Outcome<Uint8Array | null>> {
  const findings = checkPaper(settings);
  if (hasErrors(findings)) return { value: null, findings };
  const area = pageArea(frontSheet(settings), settings);
  const frame = {
    area,
    about: sheetText(settings, unit, words),
    settings,
    words,
    measure: measureText(fonts),
  };
  const page = calibrationPage(frame, unit);
  const document = { title: words.calibration.title, language: words.language, pages: [page] };
  return { value: await writePdf(document, fonts), findings };
}
