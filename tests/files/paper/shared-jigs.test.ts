import { describe, expect, test } from 'vitest';
import { groupSetups } from '../../../core/files/paper/instructions/group-setups.ts';
import { setupNumbers } from '../../../core/files/paper/instructions/numbers.ts';
import { setupSteps } from '../../../core/files/paper/instructions/steps.ts';
import { EN } from '../../../core/files/paper/words/en.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { planJigs } from '../../../core/jigs/plan.ts';
import type { Sharing } from '../../../core/jigs/sharing/types.ts';
import { contextOf } from '../../jigs/setups.ts';
import { fitOf } from '../../fit/budget/fits.ts';
import { leaning } from './made-up-fastening.ts';

const INCH = 25.4;

/** An inset front in inches, 3/32 in all around, which starts low by as much; its box as measured. */
const own: DrawerFit = { ...fitOf({ style: 'inset', openingW: 500, openingH: 200 }), unit: 'in' };
const wants = (side: number, bottom: number): DrawerFit => ({
  ...own,
  overhang: { left: 30 + side, right: 30 - side, bottom: 20 + bottom, top: 20 - bottom },
});

/** One bottom jig of 20 mm and one side jig of 30 mm for all of these. */
function shared(fits: readonly DrawerFit[]) {
  const lines = [...fits.keys()];
  const sharing: Sharing = {
    jigs: [
      { place: 'bottom', settings: [{ overhangs: [20], lines }] },
      { place: 'side', settings: [{ overhangs: [30], lines }] },
    ],
    count: 2,
    totalAdjustment: 0,
    largestAdjustment: 0,
    step: 0,
    roundingAdds: 0,
    proof: 'optimal',
    curve: [],
  };
  const { uses } = planJigs(fits, 'edge', contextOf('laser-6'), undefined, sharing).value;
  const setups = groupSetups({ fits, uses, fasteningOf: (fit) => leaning(fit, 0), templates: [] });
  return setups.map((setup) => ({
    numbers: setupNumbers(setup, EN),
    steps: setupSteps(setup, EN),
    overhangs: setup.variants.flatMap(({ members }) => members.map(({ fit }) => fit.overhang)),
  }));
}

describe('the sheets of drawers that share jigs', () => {
  // Worked by hand. The second wants 1/32 in less at the left than the jig's 30 mm, so its front hangs that far
  // too far left; it wants 1/64 in less at the bottom, so it hangs 3/32 + 1/64 = 7/64 in low.
  test('tell what the jigs set, and what they leave to each adjuster, on a sheet of its own', () => {
    const [exact, off] = shared([wants(0, 0), wants(-INCH / 32, -INCH / 64)]);
    expect(exact?.numbers.filter((line) => line.includes('djuster'))).toEqual([EN.sheets.adjuster('3/32"')]);
    expect(exact?.steps.at(-1)).toBe(EN.sheets.hangTouching('3/32"'));
    expect(off?.numbers.filter((line) => line.includes('djuster'))).toEqual([
      EN.sheets.adjuster('7/64"'),
      EN.sheets.adjusterSide('1/32"', 'cabinet right'),
    ]);
    expect(off?.steps.slice(-2)).toEqual([
      EN.sheets.hangTouching('7/64"'),
      EN.sheets.hangSide('1/32"', 'cabinet right'),
    ]);
    for (const { left, bottom } of [...(exact?.overhangs ?? []), ...(off?.overhangs ?? [])]) {
      expect(left).toBeCloseTo(30, 9);
      expect(bottom).toBeCloseTo(20, 9);
    }
  });

  // 4 mm more wanted than set: it hangs 4 mm less than 3/32 in low, which is high.
  test('say so where a front hangs high', () => {
    const [sheet] = shared([wants(0, 4)]);
    const high = '0.0637"';
    expect((4 - (3 / 32) * INCH) / INCH).toBeCloseTo(0.0637, 4);
    expect(sheet?.numbers).toContain(EN.sheets.adjusterHigh(high));
    expect(sheet?.steps.at(-1)).toBe(EN.sheets.hangHigh(high));
  });
});
