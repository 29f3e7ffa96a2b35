import { groupBy } from '../collections/group-by.ts';
import type { LengthUnit } from '../order/types.ts';
import type { Sheet, SheetPlan } from '../sheets/types.ts';
import { mmText } from '../units/mm-text.ts';
import { sheetPaths } from './sheet-paths.ts';

/** `sheets.txt`: what to put on the bed, sheet by sheet, for someone who stands at the machine. */
export function sheetList({ sheets, uses }: SheetPlan, dxfUnit: LengthUnit): string {
  const pathsOf = sheetPaths(dxfUnit);
  const lines = [
    ...uses.map(
      ({ material, thickness, sheets: number, atLeast, use }) =>
        `${material}, ${mmText(thickness)}: ${number} sheet${number === 1 ? '' : 's'} (by area no fewer than ${atLeast} would do), ${percent(use)} becomes parts`,
    ),
    '',
    ...sheets.flatMap((sheet, index) =>
      sheetLines(sheet, index + 1, pathsOf(index + 1, sheet.stock.material).dxf),
    ),
    'Cut in the order of the layers: engraving, insides, tabs (marks only), outlines last.',
    'Places are from the lower left corner of the sheet to that of the part; turns are counter-clockwise.',
    '',
  ];
  return lines.join('\r\n');
}

function sheetLines({ stock, placed, use, offcut }: Sheet, number: number, path: string): readonly string[] {
  const rest =
    offcut === null
      ? 'no usable offcut'
      : `largest offcut ${Math.floor(offcut.width)} x ${Math.floor(offcut.height)} mm`;
  const copies = [...groupBy(placed, ({ part }) => part).entries()];
  return [
    `Sheet ${number}: ${stock.name}${stock.offcut ? ' (an offcut)' : ''}, ${mmText(stock.width)} x ${mmText(stock.height)}, ${path}`,
    `  ${percent(use)} becomes parts, ${rest}`,
    ...copies.map(
      ([part, own]) => `  ${String(own.length).padStart(3)} x ${part.id.padEnd(20)}${part.title}`,
    ),
    '',
  ];
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
