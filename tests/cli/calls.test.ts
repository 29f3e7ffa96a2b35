import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import packageJson from '../../package.json';
import { call, ORDER, temporaryFolder } from './temporary.ts';

const folder = temporaryFolder();
const order = join(folder, 'kitchen.csv');
writeFileSync(order, ORDER);
writeFileSync(join(folder, 'utf16.csv'), Buffer.from(`\ufeff${ORDER}`, 'utf16le'));
writeFileSync(join(folder, 'broken.json'), '{ "format": ');
mkdirSync(join(folder, 'folder'));

const out = join(folder, 'out');

describe('a bad call ends with exit code 2 and says what would be accepted', () => {
  const cases: readonly (readonly [readonly string[], string])[] = [
    [[], 'no command is given; write make or check'],
    [['bake', order], 'there is no command "bake"; write make or check'],
    [['make'], 'make needs an order, a CSV or project file'],
    [['make', order], 'make needs --out and a folder that it may write'],
    [['check', order, order], `check takes one order; "${order}" is one too many`],
    [['make', order, order], 'make needs --out and a folder that it may write'],
    [['make', order, order, '--out', out, '--name', 'kitchen'], '--name names one order'],
    [['make', order, '--out', out, '--jobs', '0'], '--jobs is "0"; write a whole number from 1 to 256'],
    [['make', order, '--out', out, '--jobs', '1.5'], '--jobs is "1.5"; write a whole number from 1 to 256'],
    [['make', order, '--out', out, '--summary', join(folder, 'no/s.json')], 'its folder is not there'],
    [['make', order, '--out', out, '--summary', folder], 'is a folder; name a file'],
    [['make', order, order, '--out', out, '--machine', 'saw'], 'there is no machine "saw"'],
    [['check', order, '--zip'], 'check writes nothing and takes no --zip'],
    [['make', order, '--out', out, '--units', 'cm'], '--units is "cm"; write in or mm'],
    [['make', order, '--out', out, '--jigs', 'all'], '--jigs is "all"; write edge or corner'],
    [
      ['make', order, '--out', out, '--formats', 'dxf,pdf'],
      '--formats names "pdf"; write any of dxf,svg with commas, or none',
    ],
    [
      ['make', order, '--out', out, '--lists', 'tables'],
      '--lists names "tables"; write any of fit,schedule,parts,read-first with commas, or none',
    ],
    [
      ['make', order, '--out', out, '--formats', 'none', '--lists', 'none', '--paper', 'none'],
      'No file is chosen; choose at least one of DXF, SVG, fit.csv, schedule.csv, parts.csv, read-first.txt, ',
    ],
    [
      ['make', order, '--out', out, '--paper-size', 'napkin'],
      '--paper-size is "napkin"; write one of A4-or-letter, A4, letter, legal, A3, tabloid, A2, A1, A0, roll',
    ],
    [
      ['make', order, '--out', out, '--printer-factors', '1.2,1'],
      '--printer-factors is "1.2,1"; write two numbers from 0.97 to 1.03',
    ],
    [
      ['make', order, '--out', out, '--only-jigs', 'B1,X9'],
      'This order has no jig "X9"; its jigs are B1, B2, S1',
    ],
    [
      ['make', order, '--out', out, '--only-jigs', 'B1,,S1'],
      '--only-jigs is "B1,,S1"; write names with a comma between them',
    ],
    [['check', order, '--only-jigs', 'B1'], 'check writes nothing and takes no --only-jigs'],
    [['make', order, '--out', out, '--name', ' '], '--name is “ ”: it is empty; write a name'],
    [
      ['make', order, '--out', out, '--name', 'a\tb'],
      '--name is “a\\u0009b”: it holds the unprintable character U+0009; type it again',
    ],
    [['make', order, '--out', out, '--name', 'x'.repeat(400)], 'it has 400 characters; write 80 at most'],
    [['make', order, '--out', out, '--date', 'today'], '--date is "today"; write a date as YYYY-MM-DD'],
    [
      ['make', order, '--out', out, '--date', '2031-02-30'],
      '--date is "2031-02-30"; write a date as YYYY-MM-DD',
    ],
    [['make', order, '--out', out, '--colour', 'red'], "Unknown option '--colour'"],
    [['make', order, '--out'], "Option '--out <value>' argument missing"],
    [
      ['make', order, '--out', out, '--machine', 'saw'],
      'there is no machine "saw"; write laser-6, laser-3, router, none, or the path of a JSON file',
    ],
    [
      ['check', order, '--standard', 'mine'],
      'there is no standard "mine"; write face-frame-undermount, face-frame-side-mount, frameless-undermount, or the path of a JSON file',
    ],
    [['check', order, '--out', out], 'check writes nothing and takes no --out'],
    [['check', join(folder, 'none.csv')], 'there is no such file'],
    [['check', join(folder, 'folder')], 'it is a folder'],
    [['check', join(folder, 'utf16.csv')], 'The file is UTF-16 text; save it as CSV UTF-8.'],
    [['check', order, '--standard', join(folder, 'broken.json')], 'is not JSON'],
    [['make', order, '--out', order], 'is a file; name a folder'],
    [['make', order, '--out', join(order, 'below')], '--out cannot be written: '],
  ];
  test.for(cases)('%j', async ([words, message]) => {
    const { code, err, out: said } = await call(...words);
    expect({ code, said }).toEqual({ code: 2, said: '' });
    expect(err).toContain(message);
    expect(err).toContain('Try: overhang --help');
  });
});

describe('help', () => {
  test.for([[['--help']], [['help']]] as const)('%j tells the commands and the cautions', async ([words]) => {
    const { code, out: said } = await call(...words);
    expect(code).toBe(0);
    expect(said).toContain('overhang make ORDER --out DIR');
    expect(said).toContain('Wear eye and hearing protection');
  });

  test.for(['make', 'check'])('%s --help has an example', async (command) => {
    for (const words of [
      [command, '--help'],
      ['help', command],
    ]) {
      const { code, out: said } = await call(...words);
      expect(code).toBe(0);
      if (words[0] === command) expect(said).toMatch(new RegExp(`Example:\\n  overhang ${command} \\S+`));
    }
  });

  test('--version prints the version', async () => {
    expect(await call('--version')).toEqual({ code: 0, out: `${packageJson.version}\n`, err: '' });
  });
});

describe('overhang check', () => {
  test('says how many lines fit, and ends with 0', async () => {
    expect(await call('check', order)).toEqual({
      code: 0,
      out: '2 lines fitted, 0 errors, 0 warnings\n',
      err: '',
    });
  });

  test('tells faults of the order and of the fit at once, and ends with 1', async () => {
    const both = join(folder, 'both.csv');
    writeFileSync(
      both,
      'cabinet,drawer,qty,style,opening_w,opening_h,box_w\nB1,one,0,full overlay,18,6,\nB2,one,1,full overlay,18,6,18\n',
    );
    const { code, err } = await call('check', both);
    expect(code).toBe(1);
    expect(err).toMatch(/both\.csv: error: Row 2, qty/);
    expect(err).toMatch(/both\.csv: error: Drawer B2 \/ one, row 3: the box cannot enter/);
  });

  test('the demo order with deliberate faults shows at least ten different ones', async () => {
    const { code, err } = await call('check', 'assets/orders/faulty.csv');
    expect(code).toBe(1);
    const errors = err.split('\n').filter((line) => line.includes(': error: '));
    expect(new Set(errors).size).toBe(errors.length);
    expect(errors.length).toBeGreaterThanOrEqual(10);
  });
});
