import { describe, expect, test } from 'vitest';
import { cabinetKey, columnCounts } from '../../core/order/cabinets.ts';
import { drawer } from '../rules/drawers.ts';

describe('cabinetKey', () => {
  test('is the same in any case, and another in another room', () => {
    expect(cabinetKey({ cabinet: 'b1', room: 'HALL' })).toBe(cabinetKey({ cabinet: 'B1', room: 'Hall' }));
    expect(cabinetKey({ cabinet: 'B1', room: 'Hall' })).not.toBe(cabinetKey({ cabinet: 'B1' }));
  });

  test('does not mix a name up with a room', () => {
    expect(cabinetKey({ cabinet: 'b', room: 'a' })).not.toBe(cabinetKey({ cabinet: 'a b' }));
    expect(cabinetKey({ cabinet: 'c', room: 'a","b' })).not.toBe(cabinetKey({ cabinet: 'b","c', room: 'a' }));
  });
});

describe('columnCounts', () => {
  test('is the number of columns of each cabinet', () => {
    const counts = columnCounts([
      drawer({ cabinet: 'B1', column: 2 }),
      drawer({ cabinet: 'b1', column: 1 }),
      drawer({ cabinet: 'B1', column: 1, room: 'Hall' }),
    ]);
    expect(counts.get(cabinetKey({ cabinet: 'B1' }))).toBe(2);
    expect(counts.get(cabinetKey({ cabinet: 'B1', room: 'hall' }))).toBe(1);
    expect(counts.size).toBe(2);
  });
});
