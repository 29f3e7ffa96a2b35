import { z } from 'zod';
import type { Outcome } from '../findings/finding.ts';
import { checkFormat } from '../order/check-format.ts';
import { standardFrom1 } from './migrate/1-to-2.ts';
import { parseCurrentStandard, unitSchema } from './parse-current-standard.ts';
import { STANDARD_FORMAT, STANDARD_VERSION } from './standard-schema.ts';
import type { ShopStandard } from './types.ts';

const FORMAT = {
  format: STANDARD_FORMAT,
  version: STANDARD_VERSION,
  what: 'shop standard',
  code: 'rules',
} as const;

const headSchema = unitSchema.extend({ version: z.int() });

/**
 * Reads a shop standard from its JSON document, of this or an older version; the value is null when there is
 * any error. `within` is the path of the standard inside a larger document, for findings.
 */
export function parseStandard(
  json: unknown,
  file: string,
  within: readonly string[] = [],
): Outcome<ShopStandard | null> {
  const place = { file, within };
  const format = checkFormat(json, FORMAT, place);
  if (format !== undefined) return { value: null, findings: [format] };
  const { version, unit } = headSchema.parse(json);
  return parseCurrentStandard(version === 1 ? standardFrom1(json, unit) : json, place);
}
