import { describe, expect, test } from 'vitest';
import { couponSizes } from '../../core/calibration/coupon-sizes.ts';
import { readCoupon } from '../../core/calibration/read-coupon.ts';
import type { CouponMeasured } from '../../core/calibration/types.ts';
import { readMachine } from '../jigs/setups.ts';

const laser = readMachine('laser-6');
const plain = couponSizes(laser);

/** A coupon of the 6 mm laser as it was drawn, with its profile's own kerf of 0.2 mm. */
const measured = (changes: Partial<CouponMeasured> = {}): CouponMeasured => ({
  hole: plain.square,
  piece: plain.square - 0.4,
  pin: 0.1,
  slot: 0.1,
  width: plain.width,
  height: plain.height,
  ...changes,
});

describe('readCoupon', () => {
  // S37, FabAcademy 2017: hole minus piece, halved; the second page prints 0.12.
  test.each([
    [20.14, 19.76, 0.19],
    [20.09, 19.86, 0.115],
  ])('a hole of %f and a piece of %f mm make a kerf of %f', (hole, piece, kerf) => {
    expect(readCoupon(measured({ hole, piece }), laser).value?.kerf).toBeCloseTo(kerf, 12);
  });

  test('with the kerf that was allowed for, allowances and scale stay as they are', () => {
    expect(readCoupon(measured(), laser)).toEqual({
      value: { kerf: 0.2, fit: { pin: 0.1, slot: 0.1 }, scaleX: 1, scaleY: 1 },
      findings: [],
    });
  });

  test('gives the fits that the next jig needs: a cut simulated with another kerf, then with the one read', () => {
    // The machine cuts `cut` wide. A line is moved by half the kerf that is allowed for, to the waste side.
    const hole = (drawn: number, allowed: number, cut: number): number => drawn - allowed + cut;
    const piece = (drawn: number, allowed: number, cut: number): number => drawn + allowed - cut;
    for (const cut of [0.12, 0.2, 0.26]) {
      const { kerf: allowed, pinDiameter, sheet } = laser;
      const inner = hole(plain.square, allowed, cut);
      // What falls out: the line of the hole, less the other half of the cut.
      const read = readCoupon(
        measured({
          hole: inner,
          piece: inner - 2 * cut,
          width: piece(plain.width, allowed, cut),
          height: piece(plain.height, allowed, cut),
          slot: 0.2,
        }),
        laser,
      ).value;
      if (read === null) throw new Error('the coupon was refused');
      const { kerf, fit, scaleX } = read;
      expect(kerf).toBeCloseTo(cut, 9);
      expect(scaleX).toBeCloseTo(1, 5);
      // The clearance of the hole that was chosen, and that of a hole cut with the new numbers.
      const chosen = hole(pinDiameter + 0.1, allowed, cut) - pinDiameter;
      expect(hole(pinDiameter + (fit.pin ?? 0), kerf, cut) - pinDiameter).toBeCloseTo(chosen, 9);
      // A key has its sheet's thickness and a width that was cut; the tighter way is kept.
      const across = hole(sheet.thickness + 0.2, allowed, cut) - sheet.thickness;
      const along = hole(10 + 0.2, allowed, cut) - piece(10, allowed, cut);
      const next = hole(10 + (fit.slot ?? 0), kerf, cut) - piece(10, kerf, cut);
      expect(next).toBeCloseTo(Math.min(across, along), 9);
    }
  });

  test('leaves allowances alone where the machine allows for its own cut', () => {
    const machine = { ...laser, compensation: 'machine' as const };
    const { value } = readCoupon(measured({ hole: 20.5, piece: 20.1, pin: 0.2, slot: 0.3 }), machine);
    expect(value?.fit).toEqual({ pin: 0.2, slot: 0.3 });
  });

  test('tells how long a millimetre comes out each way, and warns of a bed that is out', () => {
    const { value, findings } = readCoupon(
      measured({ width: plain.width * 1.004, height: plain.height * 0.999 }),
      laser,
    );
    expect(value?.scaleX).toBeCloseTo(1.004, 9);
    expect(value?.scaleY).toBeCloseTo(0.999, 9);
    expect(findings.map(({ code, at }) => [code, at.field])).toEqual([['calibration/scale', 'x']]);
  });

  test('takes 0 for a press fit, and says so', () => {
    const { value, findings } = readCoupon(measured({ pin: -0.05 }), laser);
    expect(value?.fit.pin).toBe(0);
    expect(findings.map(({ code }) => code)).toEqual(['calibration/press-fit']);
    expect(findings[0]?.message).toMatch(/0.05 mm narrower/);
  });

  test.each([
    ['a hole no larger than its piece', { hole: 20, piece: 20 }, 'hole'],
    ['inches for millimetres', { width: 5.5 }, 'width'],
    ['a height that is no number', { height: Number.NaN }, 'height'],
    ['a pin hole that is not there', { pin: 0.12 }, 'pin'],
  ])('refuses %s, and says what is accepted', (_, changes, field) => {
    const { value, findings } = readCoupon(measured(changes), laser);
    expect(value).toBeNull();
    expect(findings.map(({ code, at }) => [code, at.field])).toEqual([['calibration/measured', field]]);
  });
});
