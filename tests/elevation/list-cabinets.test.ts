import { describe, expect, test } from 'vitest';
import { listCabinets } from '../../core/elevation/list-cabinets.ts';
import { cabinetKey } from '../../core/order/cabinets.ts';

const row = (id: string, cabinet?: string, room?: string) => ({
  id,
  cells: { ...(cabinet === undefined ? {} : { cabinet }), ...(room === undefined ? {} : { room }) },
});

describe('listCabinets', () => {
  test('keeps the order of the rows and reads names in any case as one', () => {
    const list = listCabinets([row('a', 'B1', 'Hall'), row('b', 'b1', 'hall'), row('c', 'B1')], []);
    expect(list.map(({ name, rowIds }) => [name, rowIds])).toEqual([
      ['Hall / B1', ['a', 'b']],
      ['B1', ['c']],
    ]);
    expect(list[0]?.key).toBe(cabinetKey({ room: 'Hall', cabinet: 'B1' }));
  });

  test('has the worst state of its rows and counts those that have a finding', () => {
    const list = listCabinets(
      [row('a', 'B1'), row('b', 'B1'), row('c', 'B2'), row('d')],
      [
        { rowId: 'a', finding: { severity: 'warning' } },
        { rowId: 'a', finding: { severity: 'warning' } },
        { rowId: 'b', finding: { severity: 'error' } },
        { rowId: 'd', finding: { severity: 'warning' } },
      ],
    );
    expect(list.map(({ name, state, attention }) => [name, state, attention])).toEqual([
      ['B1', 'error', 2],
      ['B2', 'right', 0],
      ['', 'warning', 1],
    ]);
  });
});
