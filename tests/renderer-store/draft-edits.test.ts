import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_ROWS } from '../../core/order/lex-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { clipboardTable } from '../../renderer/order/clipboard-table.ts';
import {
  rowsBeyond,
  rowsUnplaced,
  cellsBeyond,
  withCell,
  withDate,
  withDuplicate,
  withField,
  withMovedRow,
  withNewRow,
  withoutRow,
  withPasted,
} from '../../renderer/store/draft-edits.ts';
import { demoDraft, firstRows } from '../session/drafts.ts';

const draft = firstRows(demoDraft(), 4);
const ids = (of: Draft): readonly string[] => of.rows.map(({ id }) => id);

describe('withCell', () => {
  test('sets the trimmed text of one cell, and leaves the other rows as they are', () => {
    const after = withCell('r2', 'opening_w', ' 14 1/2 ')(draft);
    expect(after.rows[1]?.cells.opening_w).toBe('14 1/2');
    expect(after.rows[0]).toBe(draft.rows[0]);
    expect(after.standard).toBe(draft.standard);
  });

  test('takes an emptied cell away, and changes nothing when the text is the same', () => {
    expect(withCell('r2', 'opening_w', '  ')(draft).rows[1]?.cells).not.toHaveProperty('opening_w');
    const text = draft.rows[1]?.cells.opening_w ?? '';
    expect(withCell('r2', 'opening_w', `${text} `)(draft)).toBe(draft);
    expect(withCell('r2', 'front_w', '')(draft)).toBe(draft);
    expect(withCell('none', 'front_w', '1')(draft)).toBe(draft);
  });
});

describe('withNewRow', () => {
  test('puts a row of the same cabinet below another one, under an id of its own', () => {
    const after = withNewRow('r2')(draft);
    expect(ids(after)).toEqual(['r1', 'r2', 'r5', 'r3', 'r4']);
    const { cabinet, room, qty, style } = draft.rows[1]?.cells ?? {};
    expect(after.rows[2]?.cells).toEqual({ cabinet, room, qty, style });
  });

  test('puts it at the end for null, and is empty in an empty order', () => {
    expect(ids(withNewRow(null)(draft)).at(-1)).toBe('r5');
    expect(withNewRow(null)({ ...draft, rows: [] }).rows).toEqual([{ id: 'r1', cells: {} }]);
  });
});

describe('withDuplicate', () => {
  test('gives the copy a drawer name that its cabinet does not have yet', () => {
    const once = withDuplicate('r1')(draft);
    const twice = withDuplicate('r1')(once);
    const name = draft.rows[0]?.cells.drawer ?? '';
    expect(once.rows[1]?.cells).toEqual({ ...draft.rows[0]?.cells, drawer: `${name} 2` });
    expect(twice.rows[1]?.cells.drawer).toBe(`${name} 3`);
    expect(withDuplicate('r5')(once).rows[2]?.cells.drawer).toBe(`${name} 3`);
    expect(withDuplicate('none')(draft)).toBe(draft);
  });
});

describe('withoutRow and withMovedRow', () => {
  test('take a row out, and move it no farther than the ends', () => {
    expect(ids(withoutRow('r2')(draft))).toEqual(['r1', 'r3', 'r4']);
    expect(withoutRow('none')(draft)).toBe(draft);
    expect(ids(withMovedRow('r1', 2)(draft))).toEqual(['r2', 'r3', 'r1', 'r4']);
    expect(ids(withMovedRow('r4', -99)(draft))).toEqual(['r4', 'r1', 'r2', 'r3']);
    expect(withMovedRow('r4', 1)(draft)).toBe(draft);
  });

  test('withMovedRow there and back is the same order', () => {
    fc.assert(
      fc.property(fc.nat({ max: 3 }), fc.integer({ min: -3, max: 3 }), (index, by) => {
        const rowId = ids(draft)[index] ?? '';
        const moved = withMovedRow(rowId, by)(draft);
        const back = index - ids(moved).indexOf(rowId);
        expect(ids(withMovedRow(rowId, back)(moved))).toEqual(ids(draft));
      }),
      { seed: 20_310_606 },
    );
  });
});

describe('withPasted', () => {
  test('puts cells in from a cell on, and adds the rows that are missing', () => {
    const table = [
      ['14', '5'],
      ['15', ' 6 in '],
    ];
    const after = withPasted('r4', 'opening_w', table)(draft);
    expect(ids(after)).toEqual(['r1', 'r2', 'r3', 'r4', 'r5']);
    expect(after.rows[3]?.cells).toEqual({ ...draft.rows[3]?.cells, opening_w: '14', opening_h: '5' });
    expect(after.rows[4]?.cells).toEqual({ opening_w: '15', opening_h: '6 in' });
  });

  test('goes through the columns that are given, and tells how many cells had none', () => {
    const columns = ['cabinet', 'note'] as const;
    const table = [['a', 'lost', '']];
    const after = withPasted('r1', 'note', table, columns)(draft);
    expect(after.rows[0]?.cells).toEqual({ ...draft.rows[0]?.cells, note: 'a' });
    expect(cellsBeyond('note', table, columns)).toBe(1);
    expect(cellsBeyond('cabinet', [['a', 'b']], columns)).toBe(0);
  });

  test('goes into the rows that are shown alone, in their order, and adds none to them', () => {
    const shown = ['r2', 'r4'];
    const table = [['a'], ['b'], ['lost']];
    const after = withPasted('r2', 'note', table, undefined, shown)(draft);
    expect(after.rows.map(({ cells }) => cells.note)).toEqual([
      draft.rows[0]?.cells.note,
      'a',
      draft.rows[2]?.cells.note,
      'b',
    ]);
    expect(rowsUnplaced('r2', table, shown)).toBe(1);
    expect(rowsUnplaced('r4', table, shown)).toBe(2);
    expect(rowsUnplaced('r4', table, null)).toBe(0);
    expect(withPasted(null, 'note', table, undefined, [])(draft)).toBe(draft);
    expect(rowsUnplaced(null, table, [])).toBe(3);
  });

  test('makes the first rows of an empty order', () => {
    const empty = { ...draft, rows: [] };
    expect(withPasted(null, 'cabinet', [['B1', 'top'], ['B2']])(empty).rows).toEqual([
      { id: 'r1', cells: { cabinet: 'B1', drawer: 'top' } },
      { id: 'r2', cells: { cabinet: 'B2' } },
    ]);
  });

  test('changes nothing when the cells are the same, or the row or column is not there', () => {
    expect(withPasted('r1', 'cabinet', [[draft.rows[0]?.cells.cabinet ?? '']])(draft)).toBe(draft);
    expect(withPasted('none', 'cabinet', [['a']])(draft)).toBe(draft);
    expect(withPasted('r1', 'qty', [['a']], ['note'])(draft)).toBe(draft);
    expect(withPasted('r1', 'qty', [])(draft)).toBe(draft);
  });
});

describe('rowsBeyond', () => {
  const rows = (count: number) => Array.from({ length: count }, () => ['x']);

  test('is 0 while a paste stays within what an order may have, and then how many rows too many it makes', () => {
    const draft = firstRows(demoDraft(), 3);
    const [first, , third] = draft.rows.map(({ id }) => id);
    expect(rowsBeyond(draft, first ?? '', rows(MOST_ROWS))).toBe(0);
    expect(rowsBeyond(draft, first ?? '', rows(MOST_ROWS + 1))).toBe(1);
    expect(rowsBeyond(draft, third ?? '', rows(MOST_ROWS))).toBe(2);
    expect(rowsBeyond(draft, null, rows(MOST_ROWS))).toBe(3);
    expect(withPasted(first ?? '', 'note', rows(MOST_ROWS))(draft).rows).toHaveLength(MOST_ROWS);
  });
});

describe('clipboardTable', () => {
  test('reads one row more than an order may have, so that a longer paste is known to be too long', () => {
    expect(clipboardTable('a\tb\n c \td\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(clipboardTable('x\n'.repeat(MOST_ROWS))).toHaveLength(MOST_ROWS);
    expect(clipboardTable('x\n'.repeat(MOST_ROWS + 1)).length).toBeGreaterThan(MOST_ROWS);
    expect(clipboardTable('x\n'.repeat(10 * MOST_ROWS)).length).toBeLessThan(MOST_ROWS + 3);
  });
});

describe('withField and withDate', () => {
  test('change one field, or nothing when it is the same', () => {
    expect(withField('name', 'x')(draft)).toEqual({ ...draft, name: 'x' });
    expect(withField('name', draft.name)(draft)).toBe(draft);
    expect(withDate('')(draft)).not.toHaveProperty('date');
    expect(withDate('2032-01-01')(draft).date).toBe('2032-01-01');
    expect(withDate(draft.date ?? '')(draft)).toBe(draft);
  });
});
