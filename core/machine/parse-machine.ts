import { z } from 'zod';
import type { Outcome } from '../findings/finding.ts';
import { checkFormat } from '../order/check-format.ts';
import type { MachineProfile } from './profile.ts';
import { MACHINE_FORMAT, MACHINE_VERSION } from './machine-schema.ts';
import { machineFrom1 } from './migrate/1-to-2.ts';
import { parseCurrentMachine } from './parse-current-machine.ts';

const FORMAT = { format: MACHINE_FORMAT, version: MACHINE_VERSION, what: 'machine profile', code: 'machine' };

const headSchema = z.object({ version: z.int() });

/**
 * Reads a machine profile from its JSON document, of this or an older version; the value is null when there is any error. `within` is
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
  const { version } = headSchema.parse(json);
  return parseCurrentMachine(version === 1 ? machineFrom1(json) : json, place);
}
