import { describe, expect, test } from 'vitest';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { readStandard } from '../rules/read-standard.ts';

const standard = readStandard('face-frame-undermount.json');
const INCH = 25.4;

/** mm. The check values are fractions of an inch; the arithmetic may lose its last digits. */
const WITHIN = 1e-9;

/** Fits an order written as a shop would write it; one line for each drawer. */
function fitLines(...lines: readonly string[]) {
  const text = ['cabinet,cabinet_kind,column,drawer,qty,style,opening_w,opening_h', ...lines].join('\r\n');
  const order = readOrderCsv(text, { file: 'check.csv', name: 'check', unit: 'in', standard });
  expect(order.findings).toEqual([]);
  const fits = fitOrder(order.value, standard);
  expect(fits.findings).toEqual([]);
  return fits.value;
}

// All of these: common practice, no source. Face frame of 1-1/2 in members, running clearance 3/16 in a side,
// lift 1/2 in.
describe('fitOrder reproduces the check values of the face frame standard', () => {
  test('inset, 3/32 in gaps, start-low 3/32 in: bottom 1/2 in, sides 3/32 in', () => {
    const [fit] = fitLines('B1,,,only,1,inset,18,5');
    expect(fit?.overhang.bottom).toBeCloseTo(INCH / 2, 9);
    expect(fit?.overhang.left).toBeCloseTo((3 / 32) * INCH, 9);
    expect(fit?.overhang.right).toBeCloseTo((3 / 32) * INCH, 9);
    expect(Math.abs((fit?.gaps.left ?? NaN) - (3 / 32) * INCH)).toBeLessThan(WITHIN);
  });

  test('full overlay, bottom drawer: bottom 2 in, sides 1-7/16 in; drawers above it: bottom 11/16 in', () => {
    const [top, middle, bottom] = fitLines(
      'B1,,,top,1,full overlay,18,5',
      'B1,,,middle,1,full overlay,18,8',
      'B1,,,bottom,1,full overlay,18,10',
    );
    expect(bottom?.overhang.bottom).toBeCloseTo(2 * INCH, 9);
    for (const fit of [top, middle]) expect(fit?.overhang.bottom).toBeCloseTo((11 / 16) * INCH, 9);
    for (const fit of [top, middle, bottom]) {
      expect(fit?.overhang.left).toBeCloseTo((1 + 7 / 16) * INCH, 9);
      expect(fit?.overhang.right).toBeCloseTo((1 + 7 / 16) * INCH, 9);
    }
  });

  test('full overlay over the 1-1/4 in bottom rail of a desk base: bottom 1-3/4 in, sides 1-7/16 in', () => {
    const [fit] = fitLines('B1,desk base,,only,1,full overlay,18,5');
    expect(fit?.overhang.bottom).toBeCloseTo((1 + 3 / 4) * INCH, 9);
    expect(fit?.overhang.left).toBeCloseTo((1 + 7 / 16) * INCH, 9);
  });

  test('partial overlay 1/2 in, no start-low: bottom 1 in, sides 11/16 in', () => {
    const [fit] = fitLines('B1,,,only,1,partial overlay,18,5');
    expect(fit?.overhang.bottom).toBeCloseTo(INCH, 9);
    expect(fit?.overhang.left).toBeCloseTo((11 / 16) * INCH, 9);
  });

  test('full overlay on a 1-1/2 in stile shared by two fronts 1/8 in apart: 7/8 in on the shared side', () => {
    const [left, right] = fitLines('B1,,1,left,1,full overlay,18,5', 'B1,,2,right,1,full overlay,18,5');
    expect(left?.overhang.right).toBeCloseTo((7 / 8) * INCH, 9);
    expect(right?.overhang.left).toBeCloseTo((7 / 8) * INCH, 9);
    expect(left?.overhang.left).toBeCloseTo((1 + 7 / 16) * INCH, 9);
    expect(left?.rules.edges.right.overlay).toBeCloseTo((11 / 16) * INCH, 9);
  });
});
