import type { Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Feature, Part } from '../parts/types.ts';
import { sheetFeatures } from '../sheets/placed-features.ts';
import type { Sheet } from '../sheets/types.ts';
import { exportDrawing, type ExportedDrawing } from './export-drawing.ts';
import { followSheetPart } from './follow-sheet-part.ts';

/** A sheet's two cut files and what they say of themselves. */
export interface ExportedSheet extends ExportedDrawing {
  readonly sheet: Sheet;
  /** 1 for the first of the order. */
  readonly number: number;
}

/** What the machine follows of a part that lies on a sheet. */
export type FollowPart = (part: Part) => Outcome<readonly Feature[]>;

/**
 * Writes the cut files of one sheet, all its parts in one drawing from the sheet's lower left corner, and reads both
 * back; null when any is at fault. Runs engraving first, then insides, tabs, outlines (requirement DXF-6 holds over
 * the whole sheet: an edge that two parts share is reported). `follow` is kept by a caller who has many sheets.
 */
export function exportSheet(
  sheet: Sheet,
  number: number,
  machine: MachineProfile,
  follow: FollowPart = (part) => followSheetPart(part, machine),
): Outcome<ExportedSheet | null> {
  const parts = [...new Set(sheet.placed.map(({ part }) => part))];
  const followed = new Map(parts.map((part) => [part, follow(part)]));
  const features = sheetFeatures(sheet, (part) => followed.get(part)?.value ?? part.features);
  const written = exportDrawing(
    { name: `sheet ${number}`, features, openOutlines: machine.tabs.use === 'bridges' },
    machine,
  );
  const findings = [...[...followed.values()].flatMap((one) => one.findings), ...written.findings];
  return {
    value: written.value === null || hasErrors(findings) ? null : { sheet, number, ...written.value },
    findings,
  };
}

/** Sheets -> files, one sheet at a time; each distinct part is compensated once, and told of once. */
export function* exportSheets(
  sheets: readonly Sheet[],
  machine: MachineProfile,
): Generator<Outcome<ExportedSheet | null>> {
  const known = new Map<Part, readonly Feature[]>();
  const follow: FollowPart = (part) => {
    const before = known.get(part);
    if (before !== undefined) return { value: before, findings: [] };
    const followed = followSheetPart(part, machine);
    known.set(part, followed.value);
    return followed;
  };
  for (const [index, sheet] of sheets.entries()) yield exportSheet(sheet, index + 1, machine, follow);
}
