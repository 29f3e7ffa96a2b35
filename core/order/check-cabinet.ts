import { error, warning } from '../findings/make.ts';
import { comparable } from './cabinets.ts';
import { quoteText } from './quote-text.ts';
import { otherPlace, placeWords, type RowFinding } from './raw-row.ts';
import type { ReadRow } from './read-row.ts';

/**
 * What the rows of one cabinet must agree on: drawer names that differ, one kind, one quantity (only a
 * warning: it repeats the whole cabinet), and columns numbered 1, 2, 3 without a gap.
 */
export function checkCabinet(rows: readonly ReadRow[]): readonly RowFinding[] {
  return [...checkNames(rows), ...checkKind(rows), ...checkQty(rows), ...checkColumns(rows)];
}

function checkNames(rows: readonly ReadRow[]): readonly RowFinding[] {
  const seen = new Map<string, ReadRow>();
  return rows.flatMap((row) => {
    const { drawer } = row.identity;
    if (drawer === undefined) return [];
    const first = seen.get(comparable(drawer));
    seen.set(comparable(drawer), first ?? row);
    if (first === undefined) return [];
    const at = row.raw.at('drawer');
    const other = otherPlace(first.raw.at('drawer'));
    const message = `${placeWords(at)} reads ${quoteText(drawer)}, and so does ${other} of the same cabinet; give each drawer its own name.`;
    return [{ raw: row.raw, finding: error('order/drawer-duplicate', message, at, { read: drawer }) }];
  });
}

function checkKind(rows: readonly ReadRow[]): readonly RowFinding[] {
  const [first, ...others] = rows;
  if (first === undefined) return [];
  const kind = first.identity.kind ?? '';
  return others.flatMap((row) => {
    const own = row.identity.kind ?? '';
    if (own === kind) return [];
    const at = row.raw.at('cabinet_kind');
    const message = `${placeWords(at)} ${says(own)}, but ${otherPlace(first.raw.at('cabinet_kind'))} of the same cabinet ${says(kind)}; write the same kind in each row of a cabinet.`;
    return [{ raw: row.raw, finding: error('order/kind-differs', message, at, { read: own, first: kind }) }];
  });
}

const says = (kind: string): string => (kind === '' ? 'is empty' : `reads ${quoteText(kind)}`);

function checkQty(rows: readonly ReadRow[]): readonly RowFinding[] {
  const first = rows.find((row) => row.identity.qty !== undefined);
  if (first === undefined) return [];
  return rows.flatMap((row) => {
    const { qty } = row.identity;
    if (qty === undefined || qty === first.identity.qty) return [];
    const at = row.raw.at('qty');
    const expected = first.identity.qty ?? 1;
    const message = `${placeWords(at)} reads “${qty}”, but ${otherPlace(first.raw.at('qty'))} of the same cabinet reads “${expected}”: qty repeats the whole cabinet, so write the same in each row, and give stacked drawers rows of their own.`;
    return [{ raw: row.raw, finding: warning('order/qty-differs', message, at, { qty, first: expected }) }];
  });
}

function checkColumns(rows: readonly ReadRow[]): readonly RowFinding[] {
  const columns = rows.map((row) => row.identity.column);
  // A column that cannot be read has its own finding; whether there is a gap cannot be told.
  if (columns.includes(undefined)) return [];
  const present = new Set(columns);
  const reported = new Set<number>();
  return rows.flatMap((row) => {
    const column = row.identity.column ?? 1;
    if (column === 1 || present.has(column - 1) || reported.has(column)) return [];
    reported.add(column);
    const at = row.raw.at('column');
    const message = `${placeWords(at)} reads “${column}”, but the cabinet has no column ${column - 1}; number the columns 1, 2, 3 from the cabinet's left.`;
    return [
      { raw: row.raw, finding: error('order/column-gap', message, at, { column, missing: column - 1 }) },
    ];
  });
}
