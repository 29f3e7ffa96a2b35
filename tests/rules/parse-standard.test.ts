import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { changed, type Path } from './changed.ts';
import { standardJson } from './read-standard.ts';

const messages = (json: unknown): readonly (readonly string[])[] => {
  const { value, findings } = parseStandard(json, 'shop.json');
  expect(value).toBeNull();
  return findings.map(({ code, at, message }) => {
    expect(at.file).toBe('shop.json');
    return [code, at.field ?? '', message];
  });
};

const STYLES = 'inset, full overlay, partial overlay, inset bevelled';

describe('parseStandard refuses, and names the field', () => {
  test.each<[string, Path, unknown, string, string, string]>([
    [
      'another format',
      ['format'],
      'overhang-project',
      'rules/format',
      'format',
      'This is not a shop standard: one begins with "format": "overhang-standard", "version": 2.',
    ],
    [
      'no version',
      ['version'],
      undefined,
      'rules/format',
      'format',
      'This is not a shop standard: one begins with "format": "overhang-standard", "version": 2.',
    ],
    [
      'a newer version',
      ['version'],
      3,
      'rules/newer-version',
      'version',
      'This shop standard has version 3, written by a newer program; this one reads version 2: update the program, or save the file as version 2.',
    ],
    [
      'no name',
      ['name'],
      undefined,
      'rules/field',
      'name',
      'Field name: it is missing; write a text in quotation marks.',
    ],
    ['an empty name', ['name'], ' ', 'rules/field', 'name', 'Field name: it is empty; write a text.'],
    ['another unit', ['unit'], 'ft', 'rules/field', 'unit', 'Field unit: it is “ft”; write "in" or "mm".'],
    [
      'another construction',
      ['construction'],
      undefined,
      'rules/field',
      'construction',
      'Field construction: it is missing; write "face frame" or "frameless".',
    ],
    [
      'a length as a number',
      ['members', 'stile', 'value'],
      38.1,
      'rules/field',
      'members.stile.value',
      'Field members.stile.value: it is 38.1; write a text in quotation marks.',
    ],
    [
      'a length that is none',
      ['members', 'stile', 'value'],
      'wide',
      'rules/field',
      'members.stile.value',
      'Field members.stile.value: “wide” is refused: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
    ],
    [
      'a value without a source',
      ['slides', 'undermount', 'lift', 'source'],
      undefined,
      'rules/field',
      'slides.undermount.lift.source',
      'Field slides.undermount.lift.source: it is missing; write a text in quotation marks.',
    ],
    [
      'an empty source',
      ['box', 'sideThickness', 'source'],
      '',
      'rules/field',
      'box.sideThickness.source',
      'Field box.sideThickness.source: it is empty; name a document, or write common practice, no source.',
    ],
    [
      'an unknown field',
      ['box', 'length'],
      '22 in',
      'rules/field',
      'box',
      'Field box: unknown “length”; the fields here are sideThickness, frontThickness, depth, bottom.',
    ],
    [
      'a member missing',
      ['members', 'mid-rail'],
      undefined,
      'rules/field',
      'members.mid-rail',
      'Field members.mid-rail: it is missing; write an object in braces.',
    ],
    [
      'an edge condition that is none, in a style that goes by its name',
      ['styles', 1, 'edges', 'left', 'shared', 'value'],
      'shared 1',
      'rules/field',
      'styles.full overlay.edges.left.shared.value',
      'Field styles.full overlay.edges.left.shared.value: “shared 1” is refused: an edge begins with inset, lap, cover or share; write one of: inset GAP, lap OVERLAY, cover W [reveal R], share W gap G [neighbor N] (did you mean share?).',
    ],
    [
      'a bevel beyond 30 degrees',
      ['styles', 3, 'backBevel', 'value'],
      '31 deg',
      'rules/field',
      'styles.inset bevelled.backBevel.value',
      'Field styles.inset bevelled.backBevel.value: “31 deg” is refused: write an angle from 0 deg to 30 deg.',
    ],
    [
      'a bevel in words',
      ['styles', 3, 'backBevel', 'value'],
      'steep',
      'rules/field',
      'styles.inset bevelled.backBevel.value',
      'Field styles.inset bevelled.backBevel.value: “steep” is refused: write an angle from 0 deg to 30 deg.',
    ],
    [
      'another distribution',
      ['tolerances', 'jig', 'distribution'],
      'gaussian',
      'rules/field',
      'tolerances.jig.distribution',
      'Field tolerances.jig.distribution: it is “gaussian”; write "normal", "uniform" or "triangular".',
    ],
    [
      'styles that are no list',
      ['styles'],
      {},
      'rules/field',
      'styles',
      'Field styles: it is an object; write a list in brackets.',
    ],
    [
      'no style',
      ['styles'],
      [],
      'rules/no-style',
      'styles',
      'Field styles: the list is empty; write one style at least.',
    ],
    [
      'a style name twice, in another case',
      ['styles', 1, 'name'],
      'INSET',
      'rules/name-twice',
      'styles.INSET',
      'Field styles.INSET: “inset” is the same name; names differ in more than their case.',
    ],
    [
      'a name with a blank at its end',
      ['styles', 1, 'name'],
      'full overlay ',
      'rules/name-blanks',
      'styles.full overlay ',
      'Field styles.full overlay : the name begins or ends with a blank; take it out.',
    ],
    [
      'a slide that is not there',
      ['slide'],
      'roller',
      'rules/slide-unknown',
      'slide',
      'Field slide: there is no slide “roller”; write one of undermount.',
    ],
    [
      "a kind's slide that is not there",
      ['cabinetKinds', 'desk base', 'slide'],
      'constructor',
      'rules/slide-unknown',
      'cabinetKinds.desk base.slide',
      'Field cabinetKinds.desk base.slide: there is no slide “constructor”; write one of undermount.',
    ],
    [
      'a stile of no width',
      ['members', 'stile', 'value'],
      '0',
      'rules/member-zero',
      'members.stile',
      'Field members.stile: the width is 0; only the shared-stile and mid-rail of a frameless standard may be 0.',
    ],
    [
      "a kind's rail of no width",
      ['cabinetKinds', 'desk base', 'members', 'bottom-rail', 'value'],
      '0 mm',
      'rules/member-zero',
      'cabinetKinds.desk base.members.bottom-rail',
      'Field cabinetKinds.desk base.members.bottom-rail: the width is 0; only the shared-stile and mid-rail of a frameless standard may be 0.',
    ],
    [
      'a reveal wider than its member',
      ['styles', 1, 'edges', 'bottom', 'outer', 'value'],
      'cover bottom-rail reveal 2',
      'rules/reveal-over-member',
      'styles.full overlay.edges.bottom.outer',
      'Field styles.full overlay.edges.bottom.outer: the reveal is wider than the member; write a smaller one.',
    ],
  ])('%s', (_, path, value, code, field, message) => {
    expect(messages(changed(path, value))).toEqual([[code, field, message]]);
  });

  test.each([null, 7, 'text', [], {}])('%j, which is no document', (json) => {
    expect(messages(json)).toEqual([
      [
        'rules/format',
        'format',
        'This is not a shop standard: one begins with "format": "overhang-standard", "version": 2.',
      ],
    ]);
  });

  test('every fault at once', () => {
    const json = changed(['members', 'stile', 'value'], '1-1/0');
    json['unit'] = 7;
    json['extra'] = true;
    json['slides'] = { undermount: { lift: 1 } };
    const found = messages(json);
    expect(found.map(([, field]) => field)).toEqual([
      'unit',
      'members.stile.value',
      'slides.undermount.runningClearance',
      'slides.undermount.lift',
      'slides.undermount.topClearance',
      'slides.undermount.sideMember',
      'slides.undermount.widthTolerance',
      'slides.undermount.adjusters',
      '',
    ]);
    expect(found.at(-1)?.[2]).toMatch(
      /^The document: unknown “extra”; the fields here are format, version, name/,
    );
  });
});

describe('parseStandard reads', () => {
  test('a mid-rail and shared stile of 0 in a frameless standard', () => {
    const json = changed(['members', 'shared-stile', 'value'], '0', 'frameless-undermount.json');
    const { value, findings } = parseStandard(json, 'shop.json');
    expect(findings).toEqual([]);
    expect(value?.members['mid-rail'].value).toBe(0);
    expect(value?.members['shared-stile'].value).toBe(0);
  });

  test('bare numbers in the unit of the document', () => {
    const inches = parseStandard(changed(['members', 'stile', 'value'], '2'), 'shop.json');
    const metric = parseStandard(
      changed(['members', 'stile', 'value'], '22,5', 'frameless-undermount.json'),
      'shop.json',
    );
    expect(inches.value?.members.stile.value).toBe(50.8);
    expect(metric.value?.members.stile.value).toBe(22.5);
  });

  test.each(['3 deg', '3', '3°', '3,0 degrees', ' 3 DEG '])('a bevel written as %j', (text) => {
    const { value } = parseStandard(changed(['styles', 3, 'backBevel', 'value'], text), 'shop.json');
    expect(value?.styles[3]?.backBevel.value).toBe(3);
  });

  test('the styles in their order', () => {
    const { value } = parseStandard(standardJson('face-frame-undermount.json'), 'shop.json');
    expect(value?.styles.map((style) => style.name).join(', ')).toBe(STYLES);
  });
});

describe('parseStandard never throws', () => {
  test('parseStandard(any JSON in the place of any field) is a standard, or findings with their fields', () => {
    const file = 'face-frame-undermount.json';
    const paths = pathsOf(standardJson(file));
    expect(paths.length).toBeGreaterThan(200);
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue({ maxDepth: 2 }), (path, value) => {
        const read = parseStandard(changed(path, value, file), 'shop.json');
        expect(read.value === null).toBe(read.findings.length > 0);
        for (const { message, at } of read.findings) {
          expect(message).toMatch(/^[A-Z].*\.$/s);
          expect(at.file).toBe('shop.json');
        }
      }),
      { seed: 20_310_531, numRuns: 2000 },
    );
  });
});

/** The paths of all fields of a JSON document. */
function pathsOf(json: unknown): readonly Path[] {
  if (typeof json !== 'object' || json === null) return [];
  return Object.entries(json).flatMap(([key, value]) => {
    const own: Path = [Array.isArray(json) ? Number(key) : key];
    return [own].concat(pathsOf(value).map((path) => own.concat(path)));
  });
}
