import type { Finding, Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Feature } from '../parts/types.ts';
import { checkDxf } from './check-dxf.ts';
import { checkSvg } from './check-svg.ts';
import type { Drawing, ExportReport } from './drawing.ts';
import { writeDxf } from './dxf.ts';
import { exportReport } from './report.ts';
import { writeSvg } from './svg.ts';

/** What is drawn: the lines that the machine follows, in mm. */
export interface NamedDrawing {
  /** What findings call it: `B1-plate`, `sheet 1`. */
  readonly name: string;
  readonly features: readonly Feature[];
  /** Outlines may be open, for bridges hold the parts; the report counts them. */
  readonly openOutlines?: boolean;
}

/** A drawing's two cut files and what they say of themselves. */
export interface ExportedDrawing {
  readonly dxf: string;
  readonly svg: string;
  readonly dxfReport: ExportReport;
  readonly svgReport: ExportReport;
}

/** Writes the cut files of a drawing and reads both back; null when any is at fault. */
export function exportDrawing(
  { name, features, openOutlines = false }: NamedDrawing,
  machine: MachineProfile,
): Outcome<ExportedDrawing | null> {
  const drawing: Drawing = { features, layers: machine.layers, openOutlines };
  const dxf = writeDxf(drawing, machine.dxf);
  const svg = writeSvg(drawing);
  const dxfReport = exportReport(drawing, machine.dxf.unit);
  const svgReport = exportReport(drawing, 'mm');
  const findings: readonly Finding[] = [
    ...distinct([...dxf.findings, ...svg.findings, ...dxfReport.findings, ...svgReport.findings]),
    ...(dxf.value === '' ? [] : checkDxf(dxf.value, machine.dxf)),
    ...(svg.value === '' ? [] : checkSvg(svg.value, machine.layers, openOutlines)),
  ].map((finding) => ({ ...finding, message: `${name}: ${finding.message}` }));
  if (dxfReport.value === null || svgReport.value === null || hasErrors(findings)) {
    return { value: null, findings };
  }
  return {
    value: { dxf: dxf.value, svg: svg.value, dxfReport: dxfReport.value, svgReport: svgReport.value },
    findings,
  };
}

/** What several writers found in the same drawing, once. */
const distinct = (findings: readonly Finding[]): readonly Finding[] => [
  ...new Map(findings.map((finding) => [`${finding.code} ${finding.message}`, finding])).values(),
];
