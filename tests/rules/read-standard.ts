import { readFileSync } from 'node:fs';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';

const folder = new URL('../../assets/standards/', import.meta.url);

export type JsonObject = Record<string | number, unknown>;

const isJsonObject = (value: unknown): value is JsonObject => typeof value === 'object' && value !== null;

/** A value of a JSON document that must be an object or a list. */
export function jsonObject(value: unknown): JsonObject {
  if (!isJsonObject(value)) throw new Error('no object');
  return value;
}

/** The JSON document of a shop standard of `assets/standards/`. */
export const standardJson = (file: string): JsonObject =>
  jsonObject(JSON.parse(readFileSync(new URL(file, folder), 'utf8')));

/** A shop standard of `assets/standards/`; throws when it has errors. */
export function readStandard(file: string): ShopStandard {
  const { value, findings } = parseStandard(standardJson(file), file);
  if (value === null) throw new Error(`${file}: ${findings.map((finding) => finding.message).join(' ')}`);
  return value;
}
