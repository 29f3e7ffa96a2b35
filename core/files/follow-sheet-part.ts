import type { Finding, Outcome } from '../findings/finding.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { compensate } from '../parts/compensate.ts';
import type { Feature, Part } from '../parts/types.ts';
import { addTabs } from '../sheets/tabs/add-tabs.ts';
import { usualTabs, type TabSettings } from '../sheets/tabs/types.ts';

/** What the machine follows of a part in its sheet: its lines compensated, and tabs on its outlines if there are any. */
export function followSheetPart(part: Part, machine: MachineProfile): Outcome<readonly Feature[]> {
  const followed = compensate(part, machine);
  if (machine.tabs.use === 'none') return followed;
  const findings: Finding[] = [...followed.findings];
  const features = followed.value.flatMap((feature): readonly Feature[] => {
    if (feature.operation !== 'cut-outer' || feature.contour.kind === 'path') return [feature];
    const tabs = addTabs(
      feature.contour,
      tabSettings(machine),
      machine.tabs.use === 'marks' ? 'marks' : 'bridges',
      part.id,
    );
    findings.push(...tabs.findings);
    if (tabs.value === null) return [feature];
    if (tabs.value.mode === 'bridges')
      return tabs.value.stretches.map((contour) => ({ ...feature, contour }));
    return [feature, ...tabs.value.marks.map((contour): Feature => ({ operation: 'tab', contour }))];
  });
  return { value: features, findings };
}

/** Share of what lies between the lines of two parts: marks of both that face each other don't meet. */
const HALF = 0.45;

function tabSettings({ kind, kerf, tabs, sheets, compensation }: MachineProfile): TabSettings {
  const usual = usualTabs(kind === 'router' ? 'router' : 'laser', kerf);
  const between = sheets.spacing - (compensation === 'file' ? kerf : 0);
  const reach = between > 0 ? Math.min(usual.reach, HALF * between) : usual.reach;
  return { ...usual, width: tabs.width, every: tabs.spacing, reach };
}
