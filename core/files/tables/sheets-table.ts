import type { SheetPlan } from '../../sheets/types.ts';
import { writeCsv } from '../csv.ts';

const COLUMNS = [
  'sheet',
  'stock',
  'material',
  'thickness_mm',
  'sheet_width_mm',
  'sheet_height_mm',
  'part',
  'copy',
  'turned_deg',
  'x_mm',
  'y_mm',
  'sheet_used_percent',
  'offcut_width_mm',
  'offcut_height_mm',
] as const;

/**
 * `sheets.csv`: each copy of a part on its sheet, in the order in which they are cut; x and y are the lower left
 * corner of the turned part's box, from the sheet's. Copies that found no sheet come last, with sheet 0.
 */
export const sheetsTable = ({ sheets, unplaced }: SheetPlan): string =>
  writeCsv(COLUMNS, [
    ...sheets.flatMap(({ stock, placed, use, offcut }, index) =>
      placed.map(({ part, copy, turns, x, y }) => [
        index + 1,
        stock.name,
        stock.material,
        stock.thickness,
        stock.width,
        stock.height,
        part.id,
        copy,
        90 * turns,
        x,
        y,
        100 * use,
        offcut?.width ?? 0,
        offcut?.height ?? 0,
      ]),
    ),
    ...unplaced.map(({ part, copy }) => [
      0,
      '',
      part.material,
      part.thickness,
      0,
      0,
      part.id,
      copy,
      0,
      0,
      0,
      0,
      0,
      0,
    ]),
  ]);
