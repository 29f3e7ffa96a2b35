import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { compensate } from '../parts/compensate.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Part } from '../parts/types.ts';
import { checkDxf } from './check-dxf.ts';
import { checkSvg } from './check-svg.ts';
import type { Drawing, ExportReport } from './drawing.ts';
import { writeDxf } from './dxf.ts';
import { exportReport } from './report.ts';
import { writeSvg } from './svg.ts';

/** A part's two cut files and what they say of themselves. */
export interface ExportedPart {
  readonly part: Part;
  readonly dxf: string;
  readonly svg: string;
  readonly dxfReport: ExportReport;
  readonly svgReport: ExportReport;
}

/** Writes a part's cut files, compensated for the machine, and reads both back; null when any is at fault. */
export function exportPart(part: Part, machine: MachineProfile): Outcome<ExportedPart | null> {
  const followed = compensate(part, machine);
  const drawing: Drawing = { features: followed.value, layers: machine.layers };
  const dxf = writeDxf(drawing, machine.dxf);
  const svg = writeSvg(drawing);
  const dxfReport = exportReport(drawing, machine.dxf.unit);
  const svgReport = exportReport(drawing, 'mm');
  const findings: readonly Finding[] = [
    ...followed.findings,
    ...distinct([...dxf.findings, ...svg.findings, ...dxfReport.findings, ...svgReport.findings]),
    ...(dxf.value === '' ? [] : checkDxf(dxf.value, machine.dxf)),
    ...(svg.value === '' ? [] : checkSvg(svg.value, machine.layers)),
  ];
  if (dxfReport.value === null || svgReport.value === null || hasErrors(findings)) {
    return { value: null, findings };
  }
  return {
    value: { part, dxf: dxf.value, svg: svg.value, dxfReport: dxfReport.value, svgReport: svgReport.value },
    findings,
  };
}

/** What several writers found in the same drawing, once. */
const distinct = (findings: readonly Finding[]): readonly Finding[] => [
  ...new Map(findings.map((finding) => [`${finding.code} ${finding.message}`, finding])).values(),
];
