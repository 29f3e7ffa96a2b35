/** The columns of an order, in the order in which they are written; the first six are required. */
export const ORDER_COLUMNS = [
  'cabinet',
  'drawer',
  'qty',
  'style',
  'opening_w',
  'opening_h',
  'room',
  'cabinet_kind',
  'column',
  'position',
  'left',
  'right',
  'top',
  'bottom',
  'front_w',
  'front_h',
  'box_w',
  'box_h',
  'box_d',
  'front',
  'front_thickness',
  'species',
  'box_side',
  'box_front',
  'pull',
  'note',
] as const;

export type OrderColumn = (typeof ORDER_COLUMNS)[number];

export const REQUIRED_COLUMNS: readonly OrderColumn[] = [
  'cabinet',
  'drawer',
  'qty',
  'style',
  'opening_w',
  'opening_h',
];

/**
 * The column that a header names, in any case and with spaces, hyphens or underscores.
 *
 * @example columnNamed(' Opening W') // 'opening_w'
 */
export function columnNamed(header: string): OrderColumn | undefined {
  const name = plainHeader(header);
  return ORDER_COLUMNS.find((column) => column === name);
}

/** Characters of a header that are compared: no column's name is longer. */
const LONGEST_HEADER = 100;

/** A header in lower case with underscores, to compare. */
export const plainHeader = (header: string): string =>
  header
    .trim()
    .slice(0, LONGEST_HEADER)
    .toLowerCase()
    .replace(/[\s_-]+/g, '_');

/** One value for each column, in the order of the columns. */
export function forEachColumn<T>(value: T): Readonly<Record<OrderColumn, T>>;
export function forEachColumn(value: unknown): Readonly<Record<string, unknown>> {
  return Object.fromEntries(ORDER_COLUMNS.map((column) => [column, value]));
}
