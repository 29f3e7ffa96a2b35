import { Fraction } from 'fraction.js';
import Papa from 'papaparse';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { couponSizes } from '../../core/calibration/coupon-sizes.ts';
import { readCoupon } from '../../core/calibration/read-coupon.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { call, temporaryFolder } from '../cli/temporary.ts';
import { blocksOf, exampleOrder, plain, section } from './readme.ts';

// Every number of the guide is in one of these sentences, each made here of what the program computes, prints or
// accepts; the last test sees to it that no other number stands in the guide.

const GUIDE = ['From an order to jigs', 'Calibrating', 'Reading a template'].map(section).join('\n');
const TEXT = plain(GUIDE.replaceAll('|', ' '));
const checked: string[] = [];

/** The guide has this, word for word. */
function quoted(sentence: string): boolean {
  checked.push(sentence);
  return TEXT.includes(sentence);
}

const folder = temporaryFolder();
const out = join(folder, 'jigs');
const machineJson: unknown = JSON.parse(readFileSync('assets/machines/laser-6.json', 'utf8'));

beforeAll(async () => {
  const order = join(folder, 'kitchen.csv');
  writeFileSync(order, exampleOrder());
  const choice = ['--formats', 'none', '--lists', 'fit,schedule', '--paper', 'templates,calibration'];
  expect(await call('make', order, ...choice, '--paper-size', 'A2', '--out', out)).toMatchObject({ code: 0 });
  const usual = ['--formats', 'none', '--lists', 'none', '--paper', 'calibration'];
  expect(await call('make', order, ...usual, '--out', `${out}-usual`)).toMatchObject({ code: 0 });
});

const rows = (file: string) =>
  z
    .array(z.record(z.string(), z.string()))
    .parse(Papa.parse(readFileSync(join(out, file), 'utf8'), { header: true, skipEmptyLines: true }).data);

/** The words of a PDF, by Poppler. */
const words = (file: string): string =>
  plain(execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }));

/** Exact: `36.5125` becomes `1 7/16 in`. */
const inches = (mm: string): string => `${new Fraction(mm).div('25.4').toFraction(true)} in`;

const exact = (text: string): Fraction => new Fraction(text.replace(/ in$/, '').replace('-', ' '));

const drawer = (name: string) => {
  const found = rows('fit.csv').find((row) => row['drawer'] === name);
  if (found === undefined) throw new Error(`no drawer ${name}`);
  return (column: string): string => found[column] ?? '';
};

describe('the numbers of the guide', () => {
  test('overhangs: terms as the shop standard has them, sums as the program computes them', () => {
    const sums: readonly (readonly [
      where: string,
      says: string,
      terms: readonly string[],
      overhang: string,
    ])[] = [
      [
        'side of every drawer',
        'running clearance 3/16 in, lap 1 1/4 in',
        ['slides.undermount.runningClearance', 'edges.left.outer'],
        drawer('top')('overhang_left_mm'),
      ],
      [
        'bottom of the lowest',
        'lift 1/2 in, the bottom rail covered 1 1/2 in',
        ['slides.undermount.lift', 'members.bottom-rail'],
        drawer('bottom')('overhang_bottom_mm'),
      ],
      [
        'bottom of the other two',
        'lift 1/2 in, lap 1/8 in, 1/16 in so that the front starts low',
        ['slides.undermount.lift', 'edges.bottom.shared', 'startLow.shared'],
        drawer('middle')('overhang_bottom_mm'),
      ],
    ];
    for (const [where, sum, terms, overhang] of sums) {
      expect(quoted(`${where} ${sum} ${inches(overhang)}`)).toBe(true);
      const told = [...sum.matchAll(/[\d /]*\d in/g)].map(([text]) => exact(text.trim()));
      expect(told.map(String)).toEqual(terms.map((path) => String(exact(standardValue(path)))));
      const total = told.reduce((a, b) => a.add(b), new Fraction(0));
      expect(total.equals(new Fraction(overhang).div('25.4'))).toBe(true);
    }
    for (const name of ['top', 'middle', 'bottom']) {
      const of = drawer(name);
      expect([of('overhang_left_mm'), of('overhang_right_mm')]).toEqual(['36.5125', '36.5125']);
    }
    expect(drawer('top')('overhang_bottom_mm')).toBe(drawer('middle')('overhang_bottom_mm'));
    // The rail is covered whole: nothing of it is left to see.
    expect(standardValue('edges.bottom.outer')).toBe('cover bottom-rail reveal 0 in');
  });

  test('sizes of front and box', () => {
    const of = drawer('bottom');
    const [front, box] = [
      [of('front_w_mm'), of('front_h_mm')],
      [of('box_w_mm'), of('box_h_mm')],
    ].map((sizes) => sizes.map(inches).join(' × '));
    expect(quoted(`The lowest drawer gets a front of ${front} on a box of ${box}.`)).toBe(true);
  });

  test('jigs: what each sets, and for how many drawers', () => {
    const setting = rows('schedule.csv').filter((row) => row['overhang_mm'] !== '');
    const jigs = [...new Set(setting.map((row) => row['jig'] ?? ''))].sort();
    expect(jigs).toHaveLength(3);
    expect(new Set(setting.map((row) => row['drawer'])).size).toBe(3);
    const told = jigs.map((jig) => {
      const uses = setting.filter((row) => row['jig'] === jig);
      const [first] = uses;
      const drawers = `${uses.length} drawer${uses.length === 1 ? '' : 's'}`;
      return `${first?.['kind']} ${jig} sets ${inches(first?.['overhang_mm'] ?? '')} for ${drawers}`;
    });
    expect(quoted(`Three jigs set all three drawers: ${told.join(', ')}.`)).toBe(true);
  });

  test('the kerf, as the coupon is read', () => {
    const machine = parseMachine(machineJson, 'laser-6').value;
    if (machine === null) throw new Error('no machine');
    const { width, height } = couponSizes(machine);
    const measured = { hole: 20.14, piece: 19.76, pin: null, slot: null, width, height };
    const kerf = readCoupon(measured, machine).value?.kerf.toFixed(2);
    expect(quoted(`halved: of ${measured.hole} mm and ${measured.piece} mm it is ${kerf} mm.`)).toBe(true);
    // The same in the copy of the profile, which must be one that is accepted.
    const [, key = '', value = ''] = /`"(\w+)": "([^"]+)"`/.exec(GUIDE) ?? [];
    expect([key, value]).toEqual(['kerf', `${kerf} mm`]);
    const copy = { ...z.record(z.string(), z.unknown()).parse(machineJson), [key]: value };
    expect(parseMachine(copy, 'my-laser').value?.kerf).toBe(Number(kerf));
  });

  test('the printer’s factor, from a line that the calibration page has, and which factors are accepted', async () => {
    const page = words(join(`${out}-usual`, 'paper/calibration.pdf'));
    const [, line = ''] = /across the short side, should measure (\d+)"/.exec(page) ?? [];
    const factor = exact(line).div(exact('5 63/64')).round(4).toString();
    expect(quoted(`that should be ${line} in long and measures 5 63/64 in gives the factor ${factor};`)).toBe(
      true,
    );
    expect(GUIDE).toContain(`\`--printer-factors ${factor},1\``);
    expect(quoted('Factors from 0.97 to 1.03 are accepted')).toBe(true);
    for (const [factors, code] of [
      ['0.97,1.03', 1],
      ['0.969,1', 2],
      ['1,1.031', 2],
    ] as const) {
      // 1: the order is bad, so the call was right; 2: the call was wrong.
      const bad = join(folder, 'bad.csv');
      writeFileSync(bad, 'cabinet\n');
      const made = await call('make', bad, '--printer-factors', factors, '--out', join(folder, 'never'));
      expect({ factors, code: made.code }).toEqual({ factors, code });
    }
    expect(quoted('Print `paper/calibration.pdf` at 100 %')).toBe(true);
    expect(page).toContain('at 100 % (actual size)');
  });

  test('the template in the picture', () => {
    const page = words(join(out, 'paper/templates.pdf'));
    const of = drawer('bottom');
    const printed = (edge: string): string => {
      const told = inches(of(`overhang_${edge}_mm`));
      const label = edge === 'left' || edge === 'right' ? `cabinet ${edge}` : edge;
      expect(page).toContain(`${label} ${told.replace(' in', '"')}`);
      return told;
    };
    expect(printed('left')).toBe(printed('right'));
    const sentence = `here ${printed('left')} at both sides, ${printed('top')} at the top and ${printed('bottom')} at the bottom.`;
    expect(quoted(sentence)).toBe(true);
    expect(quoted('Measure the two bars first: 100 mm and 4 in.')).toBe(true);
    expect(page).toContain('100 mm');
    expect(page).toContain('4 in');
  });

  test('no number stands in the guide that is not checked here or run as a command', () => {
    let rest = TEXT;
    for (const { text } of blocksOf(GUIDE)) rest = rest.replace(plain(text), ' ');
    for (const sentence of checked) rest = rest.replaceAll(sentence, ' ');
    // Code is checked where commands are; steps are numbered in bold.
    rest = rest.replaceAll(/`[^`]*`/g, ' ').replaceAll(/\*\*\d\. /g, ' ');
    expect(checked.length).toBeGreaterThanOrEqual(9);
    expect(rest.match(/.{0,20}\d.{0,20}/g)).toBeNull();
  });
});

/** A value of the usual standard by its path, those of the style under `edges` and `startLow`: `lap 1/8 in` gives `1/8 in`. */
function standardValue(path: string): string {
  const standard: unknown = JSON.parse(readFileSync('assets/standards/face-frame-undermount.json', 'utf8'));
  const { styles } = z.object({ styles: z.array(z.looseObject({ name: z.string() })) }).parse(standard);
  const keys = path.split('.');
  const start: unknown =
    keys[0] === 'edges' || keys[0] === 'startLow'
      ? styles.find(({ name }) => name === 'full overlay')
      : standard;
  const found = keys.reduce<unknown>((value, key) => Reflect.get(z.looseObject({}).parse(value), key), start);
  return z.object({ value: z.string() }).parse(found).value.replace(/^lap /, '');
}
