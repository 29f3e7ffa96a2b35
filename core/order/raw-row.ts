import type { Finding, Place } from '../findings/finding.ts';
import type { LengthUnit } from './types.ts';
import type { OrderColumn } from './columns.ts';

/** One drawer of a CSV or project file as text, before any cell is read. */
export interface RawRow {
  /** As `Drawer.row`. */
  readonly row: number;
  /** Trimmed text; an empty cell or absent column is absent. */
  readonly cells: Readonly<Partial<Record<OrderColumn, string>>>;
  /** Where a cell stands. */
  readonly at: (column: OrderColumn) => Place;
}

/** A finding and the row that it keeps out of the order when it is an error. */
export interface RowFinding {
  readonly raw: RawRow;
  readonly finding: Finding;
}

/** What the cells may name, and the unit of bare numbers: what an order needs of a shop standard. */
export interface OrderTerms {
  readonly unit: LengthUnit;
  readonly styles: readonly string[];
  readonly cabinetKinds: readonly string[];
  readonly species: readonly string[];
  /** Sorts of pulls, by the word that a cell begins with. */
  readonly pulls: Readonly<Record<string, PullSort>>;
}

/** What an order must know of a sort of pulls. */
export interface PullSort {
  readonly holes: 1 | 2;
}

/** The words with which a message begins: `Row 4, opening_w,` or `Field order.drawers.2.opening_w`. */
export function placeWords(place: Place): string {
  if (place.field !== undefined) return `Field ${place.field}`;
  if (place.row === undefined) return 'The file';
  return place.column === undefined ? `Row ${place.row}` : `Row ${place.row}, ${place.column},`;
}

/** Another row, inside a sentence: `row 3` or `field order.drawers.1.drawer`. */
export function otherPlace(place: Place): string {
  return place.field === undefined ? `row ${place.row ?? 0}` : `field ${place.field}`;
}
