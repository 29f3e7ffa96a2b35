import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bundleCoupon } from '../../core/bundle-coupon.ts';
import { couponParts } from '../../core/calibration/coupon-parts.ts';
import { couponSizes } from '../../core/calibration/coupon-sizes.ts';
import { clearance } from '../../core/geometry/clearance.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { MACHINE_NAMES, readMachine } from '../jigs/setups.ts';
import { readWithEzdxf, type EzdxfReport } from '../readers/ezdxf.ts';
import type { ReadEntity } from '../readers/types.ts';

const machines = [
  ...MACHINE_NAMES.map((name) => readMachine(name)),
  { ...readMachine('router'), name: 'router, tool paths', compensation: 'file' as const },
];

/** The coupon's DXF files as ezdxf reads them, by the part. */
function readCouponFiles(machine: (typeof machines)[number]): ReadonlyMap<string, EzdxfReport> {
  const { value, findings } = bundleCoupon(machine, STROKE_FONT, '2026-12-01');
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  const folder = mkdtempSync(join(tmpdir(), 'overhang-coupon-'));
  try {
    const files = value.filter(({ path }) => path.endsWith('.dxf'));
    const paths = files.map(({ path, content }) => {
      const to = join(folder, path.replace('/', '-'));
      writeFileSync(to, content);
      return to;
    });
    const read = readWithEzdxf(paths);
    return new Map(
      files.flatMap(({ path }, index) => (read[index] === undefined ? [] : [[path, read[index]]])),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const span = ({ vertices }: ReadEntity, axis: 0 | 1): number => {
  const values = vertices.map((vertex) => vertex[axis]);
  return Math.max(...values) - Math.min(...values);
};

describe('couponParts', () => {
  test.each(machines)('$name: ezdxf reads the coupon, and its holes and slots are as engraved', (machine) => {
    const sizes = couponSizes(machine);
    const reports = readCouponFiles(machine);
    for (const { failure, errors, fixes } of reports.values()) {
      expect({ failure, errors, fixes }).toEqual({ failure: null, errors: [], fixes: [] });
    }
    const plate = reports.get('coupon/coupon-plate_mm.dxf');
    const inside = plate?.entities.filter(({ layer }) => layer === 'CUT_INSIDE' || layer === 'DRILL') ?? [];
    // Lines of the file lie half a cut within a hole.
    const kerf = machine.compensation === 'file' ? machine.kerf : 0;
    const diameters = inside.flatMap(({ circle, layer }) =>
      circle === null ? [] : [2 * circle[2] + (layer === 'DRILL' ? 0 : kerf)],
    );
    expect(diameters).toEqual(
      sizes.pins.allowances.map((allowance) => expect.closeTo(machine.pinDiameter + allowance, 5)),
    );
    const [square, ...slots] = inside.filter(({ circle }) => circle === null);
    if (square === undefined) throw new Error('no square');
    expect(span(square, 0) + kerf).toBeCloseTo(sizes.square, 5);
    expect(span(square, 1) + kerf).toBeCloseTo(sizes.square, 5);
    expect(slots).toHaveLength(sizes.slots.allowances.length);
    const [outline] = plate?.entities.filter(({ layer }) => layer === 'CUT_OUTSIDE') ?? [];
    if (outline === undefined) throw new Error('no outline');
    expect(span(outline, 0) - kerf).toBeCloseTo(sizes.width, 5);
    expect(span(outline, 1) - kerf).toBeCloseTo(sizes.height, 5);
    expect(sizes.width).toBeLessThanOrEqual(150);
  });

  test.each(machines)(
    '$name: everything that is cut has 3 mm of land about it, and labels can be read',
    (machine) => {
      const { value, findings } = couponParts(machine, STROKE_FONT, '2026-12-01');
      expect(findings).toEqual([]);
      for (const { features } of value) {
        const cut = features.flatMap(({ operation, contour }) =>
          operation === 'engrave' || operation === 'cut-outer' || contour.kind === 'path' ? [] : [contour],
        );
        for (const [index, one] of cut.entries()) {
          for (const other of cut.slice(index + 1)) {
            expect(clearance(one, other, 3)).toBeGreaterThanOrEqual(3 - 1e-6);
          }
        }
      }
    },
  );

  test('engraves the allowance of every hole, the material, the profile and the date', () => {
    const machine = readMachine('laser-6');
    const strokes = (date?: string): number =>
      couponParts(machine, STROKE_FONT, date).value.reduce(
        (sum, { features }) => sum + features.filter(({ operation }) => operation === 'engrave').length,
        0,
      );
    expect(strokes('2026-12-01')).toBeGreaterThan(strokes());
    const text = bundleCoupon(machine, STROKE_FONT).value.at(-1)?.content;
    expect(text).toContain('(20.14 - 19.76) / 2 = 0.19 mm');
    expect(text).toContain('-0.10, -0.05, +0.00, +0.05, +0.10, +0.15, +0.20, +0.30');
  });
});
