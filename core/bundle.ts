import type { Finding } from './findings/finding.ts';
import type { ExportReport } from './files/drawing.ts';
import { partPaths } from './files/part-paths.ts';
import { readFirst } from './files/read-first.ts';
import { fitTable } from './files/tables/fit-table.ts';
import { partsTable } from './files/tables/parts-table.ts';
import { scheduleTable } from './files/tables/schedule-table.ts';
import { exportParts, type Design, type Workshop } from './pipeline.ts';

/** A file of an order's folder, before it is written. */
export interface BundleFile {
  readonly path: string;
  readonly text: string;
  readonly report?: ExportReport;
}

export interface BundleStep {
  /** Parts written so far, of all. */
  readonly done: number;
  readonly of: number;
  readonly files: readonly BundleFile[];
  readonly findings: readonly Finding[];
}

/**
 * The files of an order's folder but for the manifest, a part at a time; the tables come last, when every
 * part is known to be good. `findings` are those of the design, for the warnings column of `fit.csv`.
 */
export function* bundleOrder(
  design: Design,
  findings: readonly Finding[],
  { machine }: Workshop,
): Generator<BundleStep> {
  const { order, fits, plan, parts } = design;
  const pathsOf = partPaths(machine.dxf.unit);
  let done = 0;
  for (const exported of exportParts(parts, machine)) {
    done += 1;
    const { value } = exported;
    const files: readonly BundleFile[] =
      value === null
        ? []
        : [
            { path: pathsOf(value.part).dxf, text: value.dxf, report: value.dxfReport },
            { path: pathsOf(value.part).svg, text: value.svg, report: value.svgReport },
          ];
    yield { done, of: parts.length, files, findings: exported.findings };
  }
  yield {
    done,
    of: parts.length,
    files: [
      { path: 'fit.csv', text: fitTable(fits, findings) },
      { path: 'schedule.csv', text: scheduleTable(plan.uses, order.unit) },
      { path: 'parts.csv', text: partsTable(parts, pathsOf) },
      { path: 'read-first.txt', text: readFirst(order, plan, machine) },
    ],
    findings: [],
  };
}
