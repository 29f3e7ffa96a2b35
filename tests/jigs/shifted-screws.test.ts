import { describe, expect, test } from 'vitest';
import { fastenDrawer } from '../../core/fastening/fasten-drawer.ts';
import { PLAN_KINDS } from '../../core/jigs/plan-kinds.ts';
import type { JigUse } from '../../core/jigs/plan-types.ts';
import { setupOf } from '../../core/jigs/requirements.ts';
import { shiftedScrews } from '../../core/jigs/shifted-screws.ts';
import { fitOf } from '../fit/budget/fits.ts';
import { readStandard } from '../rules/read-standard.ts';
import { contextOf } from './setups.ts';

const standard = readStandard('face-frame-undermount.json');
const fit = fitOf({});
const fastening = fastenDrawer(fit, standard).value;
const jig = PLAN_KINDS.bottomFence.build('B1', [setupOf(fit, 'bottom')], contextOf('laser-6'));

const usedWith = (adjustment: number): JigUse => ({
  fit,
  edge: 'bottom',
  jig,
  overhang: fit.overhang.bottom - adjustment,
  adjustment,
});

describe('shiftedScrews', () => {
  const spare = fastening.tightest?.over ?? Number.NaN;

  test('warns where a shared jig shifts the front by more than the screws have to spare, and only there', () => {
    expect(spare).toBeGreaterThan(0);
    expect(shiftedScrews([usedWith(0)], [fastening])).toEqual([]);
    expect(shiftedScrews([usedWith(spare - 0.001)], [fastening])).toEqual([]);
    const [finding, ...others] = shiftedScrews([usedWith(-(spare + 0.001))], [fastening]);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ code: 'jigs/screws-shifted', severity: 'warning' });
    expect(finding?.message).toMatch(/^B1 sets the front of .+ away from where its screws were placed/);
  });
});
