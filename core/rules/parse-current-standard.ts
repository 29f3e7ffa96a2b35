import { z } from 'zod';
import type { Outcome } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { fieldFindings, type DocumentPlace } from '../order/field-findings.ts';
import { checkStandard } from './check-standard.ts';
import { STANDARD_SCHEMAS } from './standard-schema.ts';
import type { ShopStandard } from './types.ts';

// Without a unit its own finding is enough to stop; the rest is then checked as inches.
export const unitSchema = z.object({ unit: z.enum(['in', 'mm']).catch('in') });

/** Reads a shop standard of this version, which its format has been found to be; null when there is any error. */
export function parseCurrentStandard(document: unknown, place: DocumentPlace): Outcome<ShopStandard | null> {
  const { unit } = unitSchema.parse(document);
  const read = STANDARD_SCHEMAS[unit].safeParse(document);
  if (!read.success) {
    return { value: null, findings: fieldFindings(read.error.issues, document, 'rules/field', place) };
  }
  const { format: _format, version: _version, ...standard } = read.data;
  const findings = checkStandard(standard, place);
  return { value: hasErrors(findings) ? null : standard, findings };
}
