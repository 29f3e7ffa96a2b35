import type { Finding, Outcome } from '../findings/finding.ts';
import { error, hasErrors } from '../findings/make.ts';
import { checkFormat } from '../order/check-format.ts';
import { fieldFindings, type DocumentPlace } from '../order/field-findings.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { mmText } from '../units/mm-text.ts';
import type { MachineProfile } from './profile.ts';
import { MACHINE_FORMAT, MACHINE_VERSION, machineSchema } from './machine-schema.ts';
import { OPERATIONS } from './operations.ts';

/** mm. A relief wider than the tool by this on the radius, so that the tool turns freely in it (BONE). */
const RELIEF_OVER_TOOL = 0.05;

const FORMAT = { format: MACHINE_FORMAT, version: MACHINE_VERSION, what: 'machine profile', code: 'machine' };

/**
 * Reads a machine profile from its JSON document; the value is null when there is any error. `within` is
 * the path of the profile inside a larger document, for findings.
 */
export function parseMachine(
  json: unknown,
  file: string,
  within: readonly string[] = [],
): Outcome<MachineProfile | null> {
  const place = { file, within };
  const format = checkFormat(json, FORMAT, place);
  if (format !== undefined) return { value: null, findings: [format] };
  const read = machineSchema.safeParse(json);
  if (!read.success) {
    return { value: null, findings: fieldFindings(read.error.issues, json, 'machine/field', place) };
  }
  const { format: _format, version: _version, ...profile } = read.data;
  const findings = checkMachine(profile, place);
  return { value: hasErrors(findings) ? null : profile, findings };
}

/** What no single field shows: numbers that do not go together. */
function checkMachine(profile: MachineProfile, { file, within = [] }: DocumentPlace): readonly Finding[] {
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
  return findings;
}
