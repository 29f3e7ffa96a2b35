import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { scheduleOrder, type Station } from '../../core/jigs/cover/schedule-order.ts';

const changesOf = (stations: readonly Station[]): number =>
  stations.reduce((sum, { jigs }, index) => {
    const before = stations[index - 1]?.jigs ?? [];
    return sum + new Set(jigs.filter((jig) => !before.includes(jig))).size;
  }, 0);

/** By every order of the stations. */
function fewestChanges(stations: readonly Station[]): number {
  let best = Infinity;
  const go = (done: readonly Station[], open: readonly Station[]): void => {
    if (open.length === 0) best = Math.min(best, changesOf(done));
    for (const next of open)
      go(
        [...done, next],
        open.filter((other) => other !== next),
      );
  };
  go([], stations);
  return best;
}

const stations = (most: number, kinds: number) =>
  fc
    .array(fc.uniqueArray(fc.nat(kinds - 1), { minLength: 1, maxLength: 3 }), { maxLength: most })
    .map((list) =>
      list.map((jigs, index): Station => ({ id: `d${index}`, jigs: jigs.map((jig) => `J${jig}`) })),
    );

const byOrder = (all: readonly Station[], order: readonly string[]): readonly Station[] =>
  order.flatMap((id) => all.filter((station) => station.id === id));

describe('scheduleOrder', () => {
  test.prop([stations(7, 5)], { numRuns: 300 })('changes jigs as seldom as the best of all orders', (all) => {
    const { order, changes, bound } = scheduleOrder(all);
    expect(order.toSorted()).toEqual(all.map(({ id }) => id).toSorted());
    expect(changes).toBe(changesOf(byOrder(all, order)));
    expect(changes).toBe(all.length === 0 ? 0 : fewestChanges(all));
    expect(bound).toBe(changes);
  });

  test.prop([stations(60, 12)], { numRuns: 30 })(
    'of a large order states the changes it has and a bound below, and is no worse than the order given',
    (all) => {
      const { order, changes, bound } = scheduleOrder(all);
      expect(order.toSorted()).toEqual(all.map(({ id }) => id).toSorted());
      expect(changes).toBe(changesOf(byOrder(all, order)));
      expect(bound).toBeLessThanOrEqual(changes);
      expect(changes).toBeLessThanOrEqual(changesOf(all));
      expect(scheduleOrder(all)).toEqual(scheduleOrder(all));
    },
  );

  test('keeps drawers of the same jigs together, in the order in which they came', () => {
    const plan = scheduleOrder([
      { id: 'a', jigs: ['B1', 'S1'] },
      { id: 'b', jigs: ['B2', 'S2'] },
      { id: 'c', jigs: ['S1', 'B1'] },
      { id: 'd', jigs: ['B1', 'S2'] },
    ]);
    expect(plan).toEqual({ order: ['a', 'c', 'd', 'b'], changes: 4, bound: 4 });
  });
});
