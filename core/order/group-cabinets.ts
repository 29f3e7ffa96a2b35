import { error } from '../findings/make.ts';
import { cabinetKey } from './cabinets.ts';
import { quoteText } from './quote-text.ts';
import { otherPlace, placeWords, type RowFinding } from './raw-row.ts';
import type { ReadRow, RowIdentity } from './read-row.ts';

/**
 * The rows of each cabinet, in their order; rows without a cabinet's name belong to none.
 *
 * A cabinet whose rows are not together is an error and no warning: two cabinets that share a name by
 * mistake would be read as one stack, and their top and bottom drawers would get the wrong overhangs.
 */
export function groupCabinets(rows: readonly ReadRow[]): {
  readonly value: readonly (readonly ReadRow[])[];
  readonly findings: readonly RowFinding[];
} {
  const groups = new Map<string, ReadRow[]>();
  const findings: RowFinding[] = [];
  let lastKey: string | undefined;
  for (const row of rows) {
    const { identity } = row;
    if (!isNamed(identity)) continue;
    const key = cabinetKey(identity);
    const group = groups.get(key);
    const last = group?.at(-1);
    if (last !== undefined && key !== lastKey) findings.push(apart(row, last, identity.cabinet));
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
    lastKey = key;
  }
  return { value: [...groups.values()], findings };
}

const isNamed = (identity: RowIdentity): identity is RowIdentity & { readonly cabinet: string } =>
  identity.cabinet !== undefined;

function apart(row: ReadRow, last: ReadRow, cabinet: string): RowFinding {
  const at = row.raw.at('cabinet');
  const message = `${placeWords(at)} reads ${quoteText(cabinet)}, but the rows of that cabinet ended at ${otherPlace(last.raw.at('cabinet'))}; put a cabinet's rows together, or give two cabinets two names.`;
  return { raw: row.raw, finding: error('order/cabinet-split', message, at, { read: cabinet }) };
}
