import { groupBy } from '../collections/group-by.ts';
import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { checkCabinet } from './check-cabinet.ts';
import type { OrderColumn } from './columns.ts';
import { groupCabinets } from './group-cabinets.ts';
import type { OrderTerms, RawRow, RowFinding } from './raw-row.ts';
import { readRow, type LooseDrawer, type ReadRow } from './read-row.ts';
import { stackRows, type StackPlace } from './stack-rows.ts';
import type { Drawer } from './types.ts';

/**
 * Reads the rows of an order, from a CSV or a project file, whose columns are given: the value holds the
 * drawers of the rows that are right, the findings hold every fault of every row, in the order of the rows.
 */
export const readRows = (
  raws: readonly RawRow[],
  terms: OrderTerms,
  columns: readonly OrderColumn[],
): Outcome<readonly Drawer[]> => joinRows(raws.map((raw) => readRow(raw, terms, columns)));

/** A row that has been read by itself. */
export interface RowReading {
  readonly row: ReadRow;
  readonly findings: readonly Finding[];
}

/** What the rows of one cabinet say together. */
export interface CabinetReading {
  readonly findings: readonly RowFinding[];
  readonly places: readonly (readonly [ReadRow, StackPlace])[];
}

/** The steps of `joinRows`, so that a caller can keep what they gave for rows that are still the same. */
export interface JoinSteps {
  readonly readCabinet: (rows: readonly ReadRow[]) => CabinetReading;
  readonly placeDrawer: (drawer: LooseDrawer, place: StackPlace) => Drawer;
}

export const PLAIN_JOIN: JoinSteps = {
  readCabinet(rows) {
    const { places, findings } = stackRows(rows);
    return { places, findings: [...checkCabinet(rows), ...findings] };
  },
  placeDrawer: (drawer, place) => ({ ...drawer, ...place }),
};

/** Puts rows that have been read together into cabinets and stacks. */
export function joinRows(
  readings: readonly RowReading[],
  { readCabinet, placeDrawer }: JoinSteps = PLAIN_JOIN,
): Outcome<readonly Drawer[]> {
  const cabinets = groupCabinets(readings.map(({ row }) => row));
  const read = cabinets.value.map(readCabinet);
  const places = new Map(read.flatMap((cabinet) => cabinet.places));
  const together = groupBy(
    [...cabinets.findings, ...read.flatMap(({ findings }) => findings)],
    ({ raw }) => raw,
  );
  const value: Drawer[] = [];
  const findings: Finding[] = [];
  for (const { row, findings: own } of readings) {
    const others = together.get(row.raw)?.map(({ finding }) => finding) ?? [];
    findings.push(...own, ...others);
    const place = places.get(row);
    const isRight = row.drawer !== undefined && !hasErrors(own) && !hasErrors(others);
    if (isRight && place !== undefined) value.push(placeDrawer(row.drawer, place));
  }
  return { value, findings };
}
