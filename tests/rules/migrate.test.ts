import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { changed } from './changed.ts';
import { jsonObject, readStandard, standardJson, type JsonObject } from './read-standard.ts';

/** A document of version 1, as it was shipped with version 0.1 of the program. */
const sample = (): JsonObject =>
  jsonObject(JSON.parse(readFileSync(new URL('./samples/standard-1.json', import.meta.url), 'utf8')));

const INCH_FILES = ['face-frame-undermount.json', 'face-frame-side-mount.json'];

/** A shipped standard without what version 2 added. */
function asVersion1(file: string): JsonObject {
  const json = standardJson(file);
  json['version'] = 1;
  for (const section of ['species', 'fastening', 'pulls']) delete json[section];
  const front = jsonObject(json['front']);
  const box = jsonObject(json['box']);
  for (const field of ['wood', 'groove']) delete front[field];
  for (const field of ['depth', 'bottom']) delete box[field];
  for (const slide of Object.values(jsonObject(json['slides']))) delete jsonObject(slide)['adjusters'];
  return json;
}

describe('parseStandard(a version 1 document)', () => {
  test('keeps every value that it has', () => {
    const { value, findings } = parseStandard(sample(), 'shop.json');
    expect(findings).toEqual([]);
    if (value === null) throw new Error('unreachable');
    const { version, ...written } = jsonObject(JSON.parse(writeStandard(value)));
    expect(version).toBe(2);
    const { version: _, ...before } = sample();
    expect(written).toMatchObject(before);
  });

  test.each([...INCH_FILES, 'frameless-undermount.json'])(
    'gets what %s has: the shipped standards and the migration add the same',
    (file) => {
      expect(parseStandard(asVersion1(file), file)).toEqual({ value: readStandard(file), findings: [] });
    },
  );

  test('gives its slides the adjusters of their sort, by whether a member is on the box side', () => {
    const json = sample();
    const slides = jsonObject(json['slides']);
    const side = jsonObject(structuredClone(slides['undermount']));
    jsonObject(side['sideMember'])['value'] = '1-3/4';
    slides['side'] = side;
    const { value } = parseStandard(json, 'shop.json');
    // Slides under the box raise only, those at its sides have slots both ways.
    expect(value?.slides['undermount']?.adjusters.height).toMatchObject({
      least: { value: 0 },
      most: { value: 3 },
    });
    expect(value?.slides['side']?.adjusters.height.least.value).toBeLessThan(0);
    expect(value?.slides['side']?.adjusters.depth.most.value).toBe(0);
  });

  test('tells what is wrong with it, and only that', () => {
    const json = sample();
    json['slides'] = 7;
    json['front'] = { thickness: { value: 'thick', source: 'x' } };
    json['colour'] = 'red';
    expect(parseStandard(json, 'shop.json').findings.map(({ at }) => at.field)).toEqual([
      'slides',
      'front.thickness.value',
      undefined,
    ]);
    expect(parseStandard({ format: 'overhang-standard', version: 1 }, 'a.json').value).toBeNull();
  });

  test('a version 2 document gets nothing added', () => {
    const { findings } = parseStandard(changed(['species'], undefined), 'shop.json');
    expect(findings.map(({ message }) => message)).toEqual([
      'Field species: it is missing; write an object in braces.',
    ]);
  });
});
