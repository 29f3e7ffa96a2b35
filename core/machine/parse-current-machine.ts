import type { Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { fieldFindings, type DocumentPlace } from '../order/field-findings.ts';
import { checkMachine } from './check-machine.ts';
import { machineSchema } from './machine-schema.ts';
import type { MachineProfile } from './profile.ts';

/** Reads a machine profile of this version, which its format has been found to be; null when there is any error. */
export function parseCurrentMachine(document: unknown, place: DocumentPlace): Outcome<MachineProfile | null> {
  const read = machineSchema.safeParse(document);
  if (!read.success) {
    return { value: null, findings: fieldFindings(read.error.issues, document, 'machine/field', place) };
  }
  const { format: _format, version: _version, ...profile } = read.data;
  const findings = checkMachine(profile, place);
  return { value: hasErrors(findings) ? null : profile, findings };
}
