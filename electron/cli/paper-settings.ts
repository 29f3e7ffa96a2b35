import { PAPER_LIMITS, USUAL_PAPER, type PaperSettings } from '../../core/files/paper/sheet/settings.ts';
import { SHEET_NAMES } from '../../core/files/paper/sheet/sheet-sizes.ts';
import { BadCall } from './output.ts';

/** The word for one page as large as the drawing. */
const LONG = 'roll';

/** Sheets as the command line takes them: without spaces, `A4-or-letter`. */
export const PAPER_SIZES: readonly string[] = [...SHEET_NAMES.map(wordOf), LONG];

function wordOf(name: string): string {
  return name.replaceAll(' ', '-');
}

/** The paper and printer of a call: `--paper-size A3`, `--printer-factors 1.002,0.998`; throws `BadCall`. */
export const paperSettings = (size: string | undefined, factors: string | undefined): PaperSettings => ({
  ...USUAL_PAPER,
  ...(size === undefined ? {} : { sheet: sheetOf(size) }),
  ...(factors === undefined ? {} : { factors: factorsOf(factors) }),
});

function sheetOf(word: string): PaperSettings['sheet'] {
  if (word.toLowerCase() === LONG) return 'as long as needed';
  const found = SHEET_NAMES.find((name) => wordOf(name).toLowerCase() === word.toLowerCase());
  if (found === undefined) {
    throw new BadCall(`--paper-size is "${word}"; write one of ${PAPER_SIZES.join(', ')}`);
  }
  return found;
}

function factorsOf(text: string): PaperSettings['factors'] {
  const { min, max } = PAPER_LIMITS.factor;
  const [x = NaN, y = NaN, ...more] = text
    .split(',')
    .map((word) => (word.trim() === '' ? NaN : Number(word)));
  const isRight = (factor: number): boolean => factor >= min && factor <= max;
  if (!isRight(x) || !isRight(y) || more.length > 0) {
    throw new BadCall(
      `--printer-factors is "${text}"; write two numbers from ${min} to ${max}, across the short side and along the long side, such as 1.002,0.998`,
    );
  }
  return { x, y };
}
