import { describe, expect, test } from 'vitest';
import {
  hangingOf,
  hungFit,
  registeredSides,
  sidewaysOf,
  type HangingUse,
} from '../../../core/jigs/sharing/hung-by.ts';
import { adjustWords } from '../../../core/jigs/sharing/dial-way.ts';
import { fitOf } from '../../fit/budget/fits.ts';

const INCH = 25.4;

const use = (jigId: string, edge: HangingUse['edge'], adjustment: number): HangingUse => ({
  jigId,
  edge,
  adjustment,
});

describe('hangingOf', () => {
  // Worked by hand: 1/32 in more overhang than wanted at the left hangs the front that far left; it must go right.
  test('tells which way a front is off that a shared jig sets, on either side', () => {
    const left = hangingOf([use('B1', 'bottom', 0), use('S1', 'left', -INCH / 32)]);
    expect(left).toEqual({
      registered: 'left',
      off: { side: INCH / 32, bottom: 0 },
      jigIds: ['B1', 'S1'],
    });
    expect(sidewaysOf(left)).toBe(INCH / 32);
    const right = hangingOf([use('B1', 'bottom', 0.4), use('S1', 'right', -INCH / 32)]);
    expect(right.off).toEqual({ side: INCH / 32, bottom: -0.4 });
    expect(sidewaysOf(right)).toBe(-INCH / 32);
  });

  test('takes both hands of corner fences that set what is wanted, and of others the nearer one', () => {
    const exact = ['left' as const, 'right' as const].flatMap((hand) => [
      use(`C1 ${hand}`, 'bottom', 0),
      use(`C1 ${hand}`, hand, 0),
    ]);
    expect(hangingOf(exact)).toEqual({
      registered: 'left',
      off: { side: 0, bottom: 0 },
      jigIds: ['C1 left', 'C1 right'],
    });
    const shared = [
      use('C1L', 'bottom', 0.3),
      use('C1L', 'left', 0.2),
      use('C4R', 'bottom', 0),
      use('C4R', 'right', -0.4),
    ];
    expect(hangingOf(shared)).toEqual({
      registered: 'right',
      off: { side: 0.4, bottom: 0 },
      jigIds: ['C4R'],
    });
  });

  test('of a drawer without jigs leaves everything as it is', () => {
    const fit = fitOf({});
    expect(hungFit(fit, hangingOf([]))).toBe(fit);
  });
});

describe('hungFit', () => {
  test('has the overhangs that the jigs set, and starts lower by what the bottom one is off', () => {
    const fit = fitOf({ style: 'inset', openingW: 500, openingH: 200 });
    const hung = hungFit(fit, hangingOf([use('B1', 'bottom', -0.3), use('S1', 'right', 0.5)]));
    expect(hung.overhang.bottom).toBeCloseTo(fit.overhang.bottom + 0.3, 9);
    expect(hung.overhang.top).toBeCloseTo(fit.overhang.top - 0.3, 9);
    expect(hung.overhang.right).toBeCloseTo(fit.overhang.right - 0.5, 9);
    expect(hung.overhang.left).toBeCloseTo(fit.overhang.left + 0.5, 9);
    expect(hung.rules.startLow.value).toBeCloseTo(fit.rules.startLow.value + 0.3, 9);
    expect(hung.gaps).toEqual(fit.gaps);
  });
});

describe('adjustWords', () => {
  test('says how far and which way the front must go', () => {
    expect(adjustWords('bottom', -INCH / 32, 'in')).toBe('1/32" up');
    expect(adjustWords('bottom', 0.4, 'mm')).toBe('0.4 mm down');
    expect(adjustWords('left', -INCH / 32, 'in')).toBe('1/32" to the right');
    expect(adjustWords('right', 0.25, 'mm')).toBe('0.25 mm to the right');
    expect(adjustWords('right', 0, 'mm')).toBe('');
  });
});

describe('registeredSides', () => {
  const fit = fitOf({ openingW: 500, openingH: 200 });
  const sideOf = (...uses: readonly HangingUse[]) =>
    registeredSides(uses.map(({ jigId, ...rest }) => ({ ...rest, fit, overhang: 0, jig: { id: jigId } })))(
      fit,
    );

  test('is the side of the jigs, the left one where there is none, and that of the nearer corner fence', () => {
    expect(sideOf(use('B1', 'bottom', 0), use('S1', 'right', 0))).toBe('right');
    expect(sideOf(use('B1', 'bottom', 0.4), use('S1', 'right', 0.2))).toBe('right');
    expect(sideOf(use('B1', 'bottom', 0), use('S1', 'left', 0))).toBe('left');
    expect(sideOf()).toBe('left');
    const fences = [
      use('C1L', 'bottom', 0),
      use('C1L', 'left', 0.5),
      use('C2R', 'bottom', 0),
      use('C2R', 'right', 0.2),
    ];
    expect(sideOf(...fences)).toBe('right');
    expect(sideOf(...fences)).toBe(hangingOf(fences).registered);
  });
});
