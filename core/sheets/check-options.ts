import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { mmText } from '../units/mm-text.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import type { SheetOptions, StockSheet } from './types.ts';

/** Everything in the options and the stock that would give a useless layout. */
export const checkOptions = (stock: readonly StockSheet[], options: SheetOptions): readonly Finding[] => [
  ...checkLengths(options),
  ...checkSearch(options),
  ...stock.flatMap((sheet, index) => checkStock(sheet, index)),
];

const isLength = (value: number): boolean => Number.isFinite(value) && value >= 0;

function checkLengths({ edgeMargin, spacing, kerf }: SheetOptions): readonly Finding[] {
  const broken = Object.entries({ edgeMargin, spacing, kerf }).flatMap(([field, value]) =>
    isLength(value)
      ? []
      : [
          error(
            'sheets/option',
            `The ${field} of sheets is ${value}; it must be a length of 0 mm or more.`,
            { field },
            { field, value },
          ),
        ],
  );
  if (broken.length > 0) return broken;
  const findings: Finding[] = [];
  if (spacing < kerf - SAME_LENGTH) {
    findings.push(
      error(
        'sheets/spacing',
        `The spacing of ${mmText(spacing)} between parts is less than the cut of ${mmText(kerf)}: cuts would run into each other; give ${mmText(kerf)} or more.`,
        { field: 'spacing' },
        { spacing, kerf },
      ),
    );
  }
  if (edgeMargin < kerf / 2 - SAME_LENGTH) {
    findings.push(
      error(
        'sheets/margin',
        `The margin of ${mmText(edgeMargin)} at the edges of sheets is less than half the cut of ${mmText(kerf)}: the cut would leave the sheet; give ${mmText(kerf / 2)} or more.`,
        { field: 'edgeMargin' },
        { edgeMargin, kerf },
      ),
    );
  }
  return findings;
}

function checkSearch({ seed, effort }: SheetOptions): readonly Finding[] {
  const findings: Finding[] = [];
  if (!Number.isSafeInteger(seed)) {
    findings.push(
      error(
        'sheets/option',
        `The seed of the layout is ${seed}; it must be a whole number.`,
        { field: 'seed' },
        { seed },
      ),
    );
  }
  if (!(effort >= 0)) {
    findings.push(
      error(
        'sheets/option',
        `The effort of the layout is ${effort}; it must be 0 or a number of steps.`,
        { field: 'effort' },
        { effort },
      ),
    );
  }
  return findings;
}

function checkStock(
  { name, width, height, thickness, count }: StockSheet,
  index: number,
): readonly Finding[] {
  const at = { field: `stock.${index}` };
  const findings: Finding[] = [];
  if (![width, height, thickness].every((value) => isLength(value) && value > 0)) {
    findings.push(
      error(
        'sheets/stock-size',
        `The stock sheet "${name}" is ${width} x ${height} x ${thickness} mm; all three must be above 0.`,
        at,
        { name, width, height, thickness },
      ),
    );
  }
  if (count !== null && !(Number.isSafeInteger(count) && count >= 0)) {
    findings.push(
      error(
        'sheets/stock-count',
        `The stock sheet "${name}" is there ${count} times; give a whole number, or none for as many as wanted.`,
        at,
        { name, count },
      ),
    );
  }
  return findings;
}
