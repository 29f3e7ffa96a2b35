import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { DocumentPlace } from '../order/field-findings.ts';
import { mmText } from '../units/mm-text.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { OPERATIONS } from './operations.ts';
import type { MachineProfile } from './profile.ts';

/** mm. A relief wider than the tool by this on the radius, so that the tool turns freely in it (BONE). */
const RELIEF_OVER_TOOL = 0.05;

/** What no single field shows: numbers that do not go together. */
export function checkMachine(
  profile: MachineProfile,
  { file, within = [] }: DocumentPlace,
): readonly Finding[] {
  const findings: Finding[] = [];
  const fault = (path: string, message: string): void => {
    const field = [...within, path].join('.');
    findings.push(error('machine/field', `Field ${field}: ${message}.`, { file, field }));
  };

  const least = profile.kerf / 2 + RELIEF_OVER_TOOL;
  if (profile.kind === 'router' && profile.kerf === 0) {
    fault('kerf', 'it is 0; a router has its tool diameter here');
  }
  if (profile.kind === 'none' && profile.kerf !== 0) {
    fault('kerf', `it is ${mmText(profile.kerf)}; a profile for no machine has 0`);
  }
  if (profile.kind === 'router' && profile.reliefRadius < least - SAME_LENGTH) {
    fault(
      'reliefRadius',
      `it is ${mmText(profile.reliefRadius)}; a tool of ${mmText(profile.kerf)} needs ${mmText(least)} or more`,
    );
  }
  const names = OPERATIONS.map((operation) => profile.layers[operation].name);
  for (const [index, name] of names.entries()) {
    if (names.indexOf(name) !== index)
      fault('layers', `two operations have the layer "${name}"; give each its own`);
  }
  checkSheets(profile, fault);
  return findings;
}

/** Tells a fault of a field; the words go on after `Field x: `. */
type Fault = (path: string, message: string) => void;

function checkSheets({ kerf, compensation, sheets, tabs }: MachineProfile, fault: Fault): void {
  const { stock, edgeMargin, spacing } = sheets;
  if (spacing < kerf - SAME_LENGTH) {
    fault(
      'sheets.spacing',
      `it is ${mmText(spacing)}; a cut of ${mmText(kerf)} runs between two parts, which needs ${mmText(kerf)} or more`,
    );
  }
  if (edgeMargin < kerf / 2 - SAME_LENGTH) {
    fault(
      'sheets.edgeMargin',
      `it is ${mmText(edgeMargin)}; half a cut of ${mmText(kerf)} lies outside a part, which needs ${mmText(kerf / 2)} or more`,
    );
  }
  for (const { name, width, height } of stock) {
    const least = Math.min(width, height);
    if (least > 2 * edgeMargin + SAME_LENGTH) continue;
    fault(
      `sheets.stock.${name}`,
      `"${name}" is ${mmText(width)} x ${mmText(height)}; the two margins take ${mmText(2 * edgeMargin)}, so both sides must be longer`,
    );
  }
  const names = stock.map(({ name }) => name);
  for (const [index, name] of names.entries()) {
    if (names.indexOf(name) !== index)
      fault(
        `sheets.stock.${name}.name`,
        `"${name}" names another sheet already; give each a name of its own`,
      );
  }
  const least = 2 * (tabs.width + kerf);
  if (tabs.use !== 'none' && tabs.spacing < least - SAME_LENGTH) {
    fault(
      'tabs.spacing',
      `it is ${mmText(tabs.spacing)}; tabs ${mmText(tabs.width)} wide with a cut of ${mmText(kerf)} need ${mmText(least)} or more from one to the next`,
    );
  }
  if (tabs.use === 'bridges' && compensation === 'machine' && kerf > 0) {
    fault(
      'tabs.use',
      'it is "bridges", which makes outlines open, and a machine that allows for its cut itself cannot tell the inside of those; write "marks", or compensation "file"',
    );
  }
}
