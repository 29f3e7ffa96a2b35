import { cabinetElevation } from '../../core/elevation/cabinet-elevation.ts';
import type { Elevation, RowFit } from '../../core/elevation/types.ts';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';

/** The fits of an order in CSV text, row ids `row 2`, `row 3` and so on. */
export function fitsOf(csv: string, standard: ShopStandard, unit: LengthUnit): readonly RowFit[] {
  const read = readOrderCsv(csv, { file: 'test.csv', name: 'test', unit, standard });
  const errors = read.findings.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
  return fitOrder(read.value, standard).value.map((fit) => ({ rowId: `row ${fit.drawer.row}`, fit }));
}

/** The elevation of a cabinet of an order in CSV text. */
export function elevationOf(
  csv: string,
  cabinet: string,
  standard: ShopStandard,
  unit: LengthUnit = 'in',
): Elevation {
  const own = fitsOf(csv, standard, unit).filter(({ fit }) => fit.drawer.cabinet === cabinet);
  return cabinetElevation(own, { construction: standard.construction, findings: [] });
}
