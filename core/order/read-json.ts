import type { Outcome } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { jsonFault } from './json-fault.ts';

/**
 * Reads the text of a JSON document. The value is undefined, with a finding that names line and column, where it
 * is no JSON, was cut short, or has a name twice in an object; what the document says is not looked at.
 *
 * @example readJson('{"a":', 'a.json').findings[0].message // 'Line 1, column 6: the file ends in the middle, ...'
 */
export function readJson(text: string, file: string): Outcome<unknown> {
  const fault = jsonFault(text);
  if (fault === undefined) return { value: JSON.parse(text), findings: [] };
  if (text.trim() === '') {
    return {
      value: undefined,
      findings: [error('document/json', 'The file is empty; take a whole copy of it.', { file })],
    };
  }
  const before = text.slice(0, fault.at).split(/\r\n?|\n/);
  const row = before.length;
  const message = `Line ${row}, column ${(before.at(-1) ?? '').length + 1}: ${fault.what}.`;
  return { value: undefined, findings: [error('document/json', message, { file, row })] };
}
