import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { fieldOf, textAt, valueAt, withName, withValue, type Json } from '../../renderer/document/json.ts';
import { restateStandard } from '../../renderer/document/restate.ts';
import { readStandard } from '../rules/read-standard.ts';

const document: Json = {
  name: 'x',
  list: [
    { name: 'a', size: '1' },
    { name: '', size: '2' },
  ],
  map: { b: 1, c: 2 },
};

describe('withValue', () => {
  test('changes one field and leaves the document that it was given', () => {
    expect(textAt(withValue(document, ['list', 0, 'size'], '3'), ['list', 0, 'size'])).toBe('3');
    expect(textAt(document, ['list', 0, 'size'])).toBe('1');
  });

  test('takes a field or an item out where the value is undefined', () => {
    expect(valueAt(withValue(document, ['map', 'b'], undefined), ['map'])).toEqual({ c: 2 });
    expect(valueAt(withValue(document, ['list', 0], undefined), ['list'])).toEqual([{ name: '', size: '2' }]);
  });

  test('makes records that are not there yet', () => {
    expect(withValue({}, ['a', 'b'], 'c')).toEqual({ a: { b: 'c' } });
  });
});

describe('withName', () => {
  test('gives a field another name in the same place', () => {
    expect(Object.keys(Object(valueAt(withName(document, ['map'], 'b', 'z'), ['map'])))).toEqual(['z', 'c']);
  });
});

describe('fieldOf', () => {
  test('names an item of a list as the findings do', () => {
    expect(fieldOf(document, ['list', 0, 'size'])).toBe('list.a.size');
    expect(fieldOf(document, ['list', 1, 'size'])).toBe('list.1.size');
  });
});

describe('restateStandard', () => {
  test.for(['face-frame-undermount.json', 'face-frame-side-mount.json', 'frameless-undermount.json'])(
    'says the very same lengths of %s in the other unit',
    (file) => {
      const standard = readStandard(file);
      const from = standard.unit;
      const to = from === 'in' ? 'mm' : 'in';
      const original: Json = JSON.parse(writeStandard(standard));
      const restated = restateStandard(original, from, to);
      expect(textAt(restated, ['unit'])).toBe(to);
      expect(parseStandard(restated, file).value).toEqual({ ...standard, unit: to });
    },
  );

  test('works sums out, and leaves alone what is no length', () => {
    const mm = (value: string): Json => ({ value, source: 's' });
    const restated = restateStandard(
      { a: mm('18 + 3/8'), b: mm('lap 1/2'), c: mm('lap x'), backBevel: mm('3'), name: '5' },
      'in',
      'mm',
    );
    expect(restated).toEqual({
      a: mm('466.725 mm'),
      b: mm('lap 12.7 mm'),
      c: mm('lap x'),
      backBevel: mm('3'),
      name: '5',
      unit: 'mm',
    });
  });
});
