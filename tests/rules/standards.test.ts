import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';

const folder = new URL('../../assets/standards/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.json'));

describe('the shop standards that come with the program', () => {
  test('there are three', () => {
    expect(files).toEqual([
      'face-frame-side-mount.json',
      'face-frame-undermount.json',
      'frameless-undermount.json',
    ]);
  });

  test.each(files)(
    'parseStandard(%s) has no findings, and writeStandard gives the file back byte for byte',
    (file) => {
      const text = readFileSync(new URL(file, folder), 'utf8');
      const { value, findings } = parseStandard(JSON.parse(text), file);
      expect(findings).toEqual([]);
      if (value === null) throw new Error('unreachable');
      expect(writeStandard(value)).toBe(text);
    },
  );
});
