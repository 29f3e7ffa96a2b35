import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { EDGES } from '../../core/order/types.ts';
import { anyOrder } from '../order/arbitraries.ts';
import { readStandard } from '../rules/read-standard.ts';

const standard = readStandard('face-frame-undermount.json');
const styles = standard.styles.map(({ name }) => name);
const kinds = Object.keys(standard.cabinetKinds);

describe('fitOrder', () => {
  test.prop([anyOrder(styles, kinds)], { seed: 20_261_125, numRuns: 300 })(
    'holds the equations of the design on any order',
    (order) => {
      const { value } = fitOrder(order, standard);
      for (const { overhang, rules, frontW, frontH, boxW, boxH, drawer } of value) {
        const scale = 1e-9 * Math.max(1, frontW, frontH, boxW, boxH, drawer.openingW);
        const overlay = (edge: 'left' | 'right' | 'bottom') => rules.edges[edge].overlay;
        // A given front that the standard does not let pass laps half of the difference on either side.
        const excess = frontW - (drawer.openingW + overlay('left') + overlay('right'));
        const shift = Math.abs(excess) > standard.limits.sizeDifference.value + 1e-6 ? excess / 2 : 0;
        const clearance = (drawer.openingW - boxW) / 2 + shift;
        expect(Math.abs(overhang.left - (clearance + overlay('left')))).toBeLessThanOrEqual(scale);
        expect(Math.abs(overhang.right - (clearance + overlay('right')))).toBeLessThanOrEqual(scale);
        const bottom = rules.lift.value + overlay('bottom') + rules.startLow.value;
        expect(Math.abs(overhang.bottom - bottom)).toBeLessThanOrEqual(scale);
        // The heights close: box and the overhangs above and below it are the front.
        expect(Math.abs(overhang.top + boxH + overhang.bottom - frontH)).toBeLessThanOrEqual(scale);
        // So do the widths, but for a difference that the standard lets pass.
        const open = Math.abs(overhang.left + boxW + overhang.right - frontW);
        expect(open).toBeLessThanOrEqual(standard.limits.sizeDifference.value + 1e-6 + scale);
        if (drawer.frontW === undefined) expect(open).toBeLessThanOrEqual(scale);
        for (const edge of EDGES) expect(Number.isFinite(overhang[edge])).toBe(true);
      }
    },
  );

  test.prop([anyOrder(styles, kinds)], { seed: 20_261_126, numRuns: 100 })(
    'fits each drawer the same whatever else is ordered in other cabinets',
    (order) => {
      const all = fitOrder(order, standard).value;
      const [first] = order.drawers;
      if (first === undefined) return;
      const alone = order.drawers.filter(
        (drawer) => drawer.cabinet === first.cabinet && drawer.room === first.room,
      );
      const some = fitOrder({ ...order, drawers: alone }, standard).value;
      const rows = new Set(some.map(({ drawer }) => drawer.row));
      expect(some).toEqual(all.filter(({ drawer }) => rows.has(drawer.row)));
    },
  );
});
