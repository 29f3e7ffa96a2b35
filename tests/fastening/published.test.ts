import { describe, expect, test } from 'vitest';
import { clearanceBit, pilotBit, pilotTarget } from '../../core/fastening/bits.ts';
import { withdrawalLoad } from '../../core/fastening/withdrawal.ts';
import { INCH, mm, STANDARD, stockScrew } from './fits.ts';

/** N in a pound of force. */
const POUND = 4.4482216;

describe('withdrawalLoad', () => {
  // Wood Handbook FPL-GTR-282 Eq. 8-10, p = 108.25 G² D L; loads worked from it by hand (reference.md 1.4), to 0.1 N.
  // The inch form p = 15 700 G² D L in pounds (from memory) must say the same within its rounding, 0.01 %.
  test.for([
    { gauge: 8, diameter: 0.164, gravity: 0.63, length: 1, newtons: 4545.8, pounds: 1021.9 },
    { gauge: 8, diameter: 0.164, gravity: 0.5, length: 0.5, newtons: undefined, pounds: 321.8 },
    { gauge: 8, diameter: 0.164, gravity: 0.42, length: 0.5, newtons: undefined, pounds: 227.1 },
  ])(
    '#$gauge, G $gravity, $length in of thread: $pounds lb',
    ({ diameter, gravity, length, newtons, pounds }) => {
      const load = withdrawalLoad({
        specificGravity: gravity,
        diameter: diameter * INCH,
        length: length * INCH,
      });
      if (newtons !== undefined) expect(Math.abs(load - newtons)).toBeLessThan(0.5);
      expect(Math.abs(load / POUND - pounds)).toBeLessThan(0.1);
      expect(Math.abs(load / POUND / (15_700 * gravity ** 2 * diameter * length) - 1)).toBeLessThan(1e-4);
    },
  );
});

describe('pilotTarget', () => {
  // Wood Handbook ch. 8: lead holes of about 70 % of the root in softwoods, 90 % in hardwoods. Root diameters are
  // those of NDS Appendix Table L3, from memory; the products are arithmetic (reference.md 2.2).
  test.for([
    { gauge: 6, root: 0.113, soft: 0.0791, hard: 0.1017 },
    { gauge: 8, root: 0.131, soft: 0.0917, hard: 0.1179 },
    { gauge: 10, root: 0.152, soft: 0.1064, hard: 0.1368 },
    { gauge: 14, root: 0.196, soft: 0.1372, hard: 0.1764 },
  ])('#$gauge: $soft in in softwood, $hard in in hardwood', ({ root, soft, hard }) => {
    const screw = { ...stockScrew('#8 x 1-1/4 in pan'), root: mm(root * INCH) };
    expect(pilotTarget(screw, { softwood: true }) / INCH).toBeCloseTo(soft, 4);
    expect(pilotTarget(screw, { softwood: false }) / INCH).toBeCloseTo(hard, 4);
  });
});

describe('pilotBit', () => {
  // Common practice, no source: 7/64 in for a #8 in hardwood.
  test('takes 7/64 in for a #8 in hardwood: the largest bit at hand that is not above the target', () => {
    const target = pilotTarget(stockScrew('#8 x 1-1/4 in pan'), { softwood: false });
    expect(pilotBit(target, STANDARD.fastening.bits) / INCH).toBeCloseTo(7 / 64, 9);
  });

  test('takes the smallest bit where none is small enough', () => {
    expect(pilotBit(1, [mm(2), mm(3)])).toBe(2);
  });
});

describe('clearanceBit', () => {
  // ASME B18.6.1, #8: 0.060 + 0.013 x 8 = 0.164 in; 11/64 in is the next size of 64ths.
  test('takes 11/64 in for a #8, whose shank is 0.164 in', () => {
    expect(clearanceBit(stockScrew('#8 x 1-1/4 in pan'), STANDARD.fastening.bits)).toBeCloseTo(
      (11 / 64) * INCH,
      9,
    );
  });
});

describe('the stock of the standards', () => {
  test('has the diameters of ASME B18.6.1, 0.060 + 0.013 n in', () => {
    expect(STANDARD.fastening.stock.length).toBeGreaterThan(0);
    for (const { gauge, diameter } of STANDARD.fastening.stock) {
      expect(diameter.value / INCH).toBeCloseTo(0.06 + 0.013 * gauge, 6);
    }
  });
});
