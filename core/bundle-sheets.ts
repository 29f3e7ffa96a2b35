import type { BundleFile } from './bundle-types.ts';
import { exportSheets } from './files/export-sheet.ts';
import { packParts } from './files/pack-parts.ts';
import { sheetList } from './files/sheet-list.ts';
import { sheetPaths } from './files/sheet-paths.ts';
import { sheetsTable } from './files/tables/sheets-table.ts';
import type { Outcome } from './findings/finding.ts';
import { hasErrors } from './findings/make.ts';
import type { MachineProfile } from './machine/profile.ts';
import type { Part } from './parts/types.ts';

/**
 * Parts laid out on sheets: nothing now and then while they are packed, which takes long, then a DXF and an SVG file
 * for each sheet, a sheet at a time, then two lists. No file when a part finds no sheet.
 */
export function* bundleSheets(
  parts: readonly Part[],
  machine: MachineProfile,
  stop: () => boolean = () => false,
): Generator<Outcome<readonly BundleFile[]>> {
  const packing = packParts(parts, machine);
  let packed = packing.next();
  while (packed.done !== true) {
    yield { value: [], findings: [] };
    if (stop()) return;
    packed = packing.next();
  }
  const { value: plan, findings } = packed.value;
  yield { value: [], findings };
  if (hasErrors(findings)) return;
  const pathsOf = sheetPaths(machine.dxf.unit);
  for (const exported of exportSheets(plan.sheets, machine)) {
    if (stop()) return;
    if (exported.value === null) {
      yield { value: [], findings: exported.findings };
      continue;
    }
    const { number, sheet, dxf, svg, dxfReport, svgReport } = exported.value;
    const paths = pathsOf(number, sheet.stock.material);
    yield {
      value: [
        { path: paths.dxf, content: dxf, report: dxfReport },
        { path: paths.svg, content: svg, report: svgReport },
      ],
      findings: exported.findings,
    };
  }
  yield {
    value: [
      { path: 'sheets/sheets.csv', content: sheetsTable(plan) },
      { path: 'sheets/sheets.txt', content: sheetList(plan, machine.dxf.unit) },
    ],
    findings: [],
  };
}
