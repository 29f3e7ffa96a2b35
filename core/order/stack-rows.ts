import { error } from '../findings/make.ts';
import { placeWords, type RowFinding } from './raw-row.ts';
import type { ReadRow } from './read-row.ts';
import type { Drawer, Position } from './types.ts';

/** Where a drawer stands in its column. */
export type StackPlace = Pick<Drawer, 'position' | 'first' | 'last'>;

const RANK: Readonly<Record<Position, number>> = { top: 0, middle: 1, bottom: 2 };

/**
 * The place of each drawer in its column of one cabinet, from the order of the rows (top to bottom) and
 * the positions that rows give themselves. A drawer alone in its column is a bottom one.
 */
export function stackRows(rows: readonly ReadRow[]): {
  readonly places: readonly (readonly [ReadRow, StackPlace])[];
  readonly findings: readonly RowFinding[];
} {
  const stacks = new Map<number | undefined, ReadRow[]>();
  for (const row of rows) {
    const stack = stacks.get(row.identity.column);
    if (stack === undefined) stacks.set(row.identity.column, [row]);
    else stack.push(row);
  }
  const places: (readonly [ReadRow, StackPlace])[] = [];
  const findings: RowFinding[] = [];
  for (const stack of stacks.values()) {
    let above: Position | undefined;
    for (const [index, row] of stack.entries()) {
      const position = row.identity.position ?? byOrder(index, stack.length);
      places.push([row, { position, first: index === 0, last: index === stack.length - 1 }]);
      if (above !== undefined && !mayFollow(above, position)) findings.push(outOfOrder(row, above, position));
      above = position;
    }
  }
  return { places, findings };
}

function byOrder(index: number, count: number): Position {
  if (index === count - 1) return 'bottom';
  return index === 0 ? 'top' : 'middle';
}

/** Below a top drawer comes a middle or bottom one, below a middle one another or the bottom one. */
const mayFollow = (above: Position, below: Position): boolean =>
  RANK[above] < RANK[below] || (above === 'middle' && below === 'middle');

function outOfOrder(row: ReadRow, above: Position, position: Position): RowFinding {
  const at = row.raw.at('position');
  const own = row.identity.position === undefined ? 'is' : 'reads';
  const message = `${placeWords(at)} ${own} “${position}”, below a drawer that is “${above}” in the same column; list a cabinet's drawers from top to bottom, with one top and one bottom drawer at most.`;
  return { raw: row.raw, finding: error('order/position-order', message, at, { position, above }) };
}
