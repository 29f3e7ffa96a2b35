import type { Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { compensate } from '../parts/compensate.ts';
import type { Part } from '../parts/types.ts';
import { exportDrawing, type ExportedDrawing } from './export-drawing.ts';

/** A part's two cut files and what they say of themselves. */
export interface ExportedPart extends ExportedDrawing {
  readonly part: Part;
}

/** Writes a part's cut files, compensated for the machine, and reads both back; null when any is at fault. */
export function exportPart(part: Part, machine: MachineProfile): Outcome<ExportedPart | null> {
  const followed = compensate(part, machine);
  const written = exportDrawing({ name: part.id, features: followed.value }, machine);
  const findings = [...followed.findings, ...written.findings];
  return {
    value: written.value === null || hasErrors(findings) ? null : { part, ...written.value },
    findings,
  };
}
