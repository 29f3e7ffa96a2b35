import type { BundleFile } from './bundle-types.ts';
import { couponParts } from './calibration/coupon-parts.ts';
import { couponText } from './calibration/coupon-text.ts';
import { exportPart } from './files/export-part.ts';
import { cutFileName } from './files/file-name.ts';
import type { Outcome } from './findings/finding.ts';
import type { MachineProfile } from './machine/profile.ts';
import type { StrokeFont } from './parts/stroke-font.ts';

/** The coupon of a machine: a DXF and an SVG file for each of its parts, and how it is read. */
export function bundleCoupon(
  machine: MachineProfile,
  font: StrokeFont,
  date?: string,
): Outcome<readonly BundleFile[]> {
  const parts = couponParts(machine, font, date);
  const exported = parts.value.map((part) => exportPart(part, machine));
  const files = exported.flatMap(({ value }): readonly BundleFile[] =>
    value === null
      ? []
      : [
          {
            path: `coupon/${cutFileName(value.part.id, machine.dxf.unit, 'dxf')}`,
            content: value.dxf,
            report: value.dxfReport,
          },
          {
            path: `coupon/${cutFileName(value.part.id, 'mm', 'svg')}`,
            content: value.svg,
            report: value.svgReport,
          },
        ],
  );
  return {
    value: [...files, { path: 'coupon/coupon.txt', content: couponText(machine) }],
    findings: [...parts.findings, ...exported.flatMap(({ findings }) => findings)],
  };
}
