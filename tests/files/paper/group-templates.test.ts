import { describe, expect, test } from 'vitest';
import { groupTemplates } from '../../../core/files/paper/template/group-templates.ts';
import { fastenOrder } from '../../../core/fastening/fasten-order.ts';
import { fitOrder } from '../../../core/fit/fit-order.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { readOrderCsv } from '../../../core/order/read-csv.ts';
import { readStandard } from '../../rules/read-standard.ts';
import { demoFits } from './fits.ts';
import { leaning } from './made-up-fastening.ts';

const { fits } = demoFits('harbor-library');

const bare = (all: readonly DrawerFit[]) => all.map((fit) => ({ fit, fastening: null }));

describe('groupTemplates', () => {
  test('groupTemplates serves every drawer by one template, and drawers that share one are alike', () => {
    const templates = groupTemplates(bare(fits));
    expect(templates.flatMap(({ users }) => users).sort((a, b) => a.drawer.row - b.drawer.row)).toEqual(fits);
    expect(templates.length).toBeLessThan(fits.length);
    for (const { fit, users } of templates) {
      for (const user of users) {
        for (const of of ['frontW', 'frontH', 'boxW', 'boxH'] as const)
          expect(user[of]).toBeCloseTo(fit[of], 2);
        for (const edge of ['left', 'right', 'top', 'bottom'] as const) {
          expect(user.overhang[edge]).toBeCloseTo(fit.overhang[edge], 2);
        }
      }
    }
  });

  test('groupTemplates joins drawers that differ by float noise and parts those that differ by 0.01 mm', () => {
    const [fit] = fits;
    if (fit === undefined) throw new Error('no fits');
    const moved = (by: number): DrawerFit => ({
      ...fit,
      overhang: { ...fit.overhang, left: fit.overhang.left + by, right: fit.overhang.right - by },
    });
    expect(groupTemplates(bare([fit, moved(1e-9)]))).toHaveLength(1);
    expect(groupTemplates(bare([fit, moved(0.01)]))).toHaveLength(2);
  });

  test('groupTemplates parts drawers whose left and right are swapped', () => {
    const [, , , , left, , , right] = fits;
    if (left === undefined || right === undefined) throw new Error('no fits');
    expect(left.overhang.left).toBeCloseTo(right.overhang.right, 6);
    expect(groupTemplates(bare([left, right]))).toHaveLength(2);
  });

  test('groupTemplates parts drawers whose screws lean otherwise', () => {
    const [fit] = fits;
    if (fit === undefined) throw new Error('no fits');
    const of = (degrees: number) => ({ fit, fastening: leaning(fit, degrees) });
    expect(groupTemplates([of(5), of(5)])).toHaveLength(1);
    expect(groupTemplates([of(5), of(6)])).toHaveLength(2);
  });

  test('groupTemplates parts drawers whose fronts take screws of other lengths: no template names one that comes out', () => {
    const standard = readStandard('face-frame-undermount.json');
    const rows = ['1-1/4', '1', '7/8', '3/4', '3/4'].map(
      (thick, row) => `C${row},top,1,full overlay,15,6,${thick}`,
    );
    const csv = ['cabinet,drawer,qty,style,opening_w,opening_h,front_thickness', ...rows, ''].join('\n');
    const order = readOrderCsv(csv, { file: 'thick.csv', name: 'thick', unit: 'in', standard }).value;
    const fastenings = fastenOrder(fitOrder(order, standard).value, standard).value;
    const templates = groupTemplates(fastenings.map((fastening) => ({ fit: fastening.fit, fastening })));
    expect(new Set(fastenings.map(({ screw }) => screw?.name)).size).toBeGreaterThan(1);
    for (const { fastening, users } of templates) {
      const named = fastening?.screw;
      if (named === undefined || named === null) throw new Error('no screw');
      for (const user of users) {
        expect(named).toBe(fastenings.find(({ fit }) => fit === user)?.screw);
        expect(named.length.value - user.boxFront).toBeLessThan(user.frontThickness);
      }
    }
  });
});
