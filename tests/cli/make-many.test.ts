import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Papa from 'papaparse';
import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { bundleCli } from './bundle.ts';
import { call, ORDER, temporaryFolder } from './temporary.ts';
import { faultsOf } from './whole-output.ts';

const folder = temporaryFolder();
/** Few files, so that a call is short. */
const LITTLE = ['--paper', 'none', '--formats', 'svg', '--only-jigs', 'S1'];

const order = (name: string, text = ORDER): string => {
  const path = join(folder, name);
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, text);
  return path;
};
const kitchen = order('kitchen.csv');
const bath = order('bath.csv', ORDER.replace('10 1/4', '9 3/4'));
const other = order('other/Kitchen.csv', ORDER.replace('10 1/4', '8'));
const bad = order('bad.csv', ORDER.replace('18,5 1/2', 'wide,5 1/2'));

const bytesIn = (place: string): ReadonlyMap<string, string> => {
  const names = readdirSync(place, { recursive: true }).map(String).toSorted();
  const files = names.filter((name) => statSync(join(place, name)).isFile());
  return new Map(files.map((name) => [name, readFileSync(join(place, name)).toString('base64')]));
};

const summarySchema = z.strictObject({
  format: z.literal('overhang-summary'),
  version: z.literal(1),
  made: z.number(),
  unchanged: z.number(),
  failed: z.number(),
  drawers: z.number(),
  jigs: z.number(),
  parts: z.number(),
  warnings: z.number(),
  seconds: z.number(),
  orders: z.array(
    z.strictObject({
      order: z.string(),
      place: z.string(),
      state: z.enum(['made', 'unchanged', 'failed']),
      drawers: z.number(),
      jigs: z.number(),
      parts: z.number(),
      files: z.number(),
      errors: z.number(),
      warnings: z.number(),
      reason: z.string().nullable(),
      seconds: z.number(),
    }),
  ),
});
const summaryOf = (path: string) => summarySchema.parse(JSON.parse(readFileSync(path, 'utf8')));
const states = (path: string) => summaryOf(path).orders.map(({ state }) => state);

describe('overhang make, from the bundle with threads', () => {
  let main = '';
  const bundled = (...words: readonly string[]) =>
    spawnSync(process.execPath, [main, 'make', ...words], { encoding: 'utf8' });
  beforeAll(async () => {
    main = await bundleCli(folder);
  });

  test.each([
    ['all jigs', [], 60],
    ['some jigs', ['--only-jigs', 'B1,G2L'], 4],
    ['paper alone', ['--formats', 'none'], 4],
  ])(
    'gives the same bytes of one long order whether its parts are written on a thread or here: %s',
    (name, choice, files) => {
      expect(existsSync(join(folder, 'cli', 'part-worker.js'))).toBe(true);
      const [here, thread] = ['1', '2'].map((jobs) => {
        const out = join(folder, `long ${name} ${jobs}`);
        const long = resolve('assets/orders/boathouse-frameless.csv');
        const how = ['--units', 'mm', '--standard', 'frameless-undermount', '--paper', 'checklist'];
        const { status, stdout } = bundled(long, ...how, ...choice, '--jobs', jobs, '--out', out);
        expect(status).toBe(0);
        // The thread is for twelve lines and more.
        expect(Number(/on (\d+) lines/.exec(stdout)?.[1])).toBeGreaterThan(12);
        return bytesIn(out);
      });
      expect(here?.size).toBeGreaterThan(files);
      expect(thread).toEqual(here);
    },
  );

  test('gives the same bytes for one and for three jobs, as folders and as zips', () => {
    for (const kind of [[], ['--zip']]) {
      const [one, three] = ['1', '3'].map((jobs) => {
        const out = join(folder, `jobs-${jobs}${kind.join('')}`);
        const { status, stderr } = bundled(
          kitchen,
          bath,
          other,
          ...LITTLE,
          ...kind,
          '--jobs',
          jobs,
          '--out',
          out,
        );
        expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
        return out;
      });
      const bytes = bytesIn(one ?? '');
      expect(bytes.size).toBeGreaterThanOrEqual(3);
      expect(bytesIn(three ?? '')).toEqual(bytes);
    }
    expect(readdirSync(join(folder, 'jobs-3--zip')).toSorted()).toEqual([
      'Kitchen-2.zip',
      'bath.zip',
      'kitchen.zip',
    ]);
    for (const name of readdirSync(join(folder, 'jobs-3--zip'))) {
      expect(faultsOf(join(folder, 'jobs-3--zip', name))).toEqual([]);
    }
  });

  test('tells a bad order and one that is not there, makes the rest, and ends with 1', () => {
    const [out, summary] = [join(folder, 'mixed'), join(folder, 'mixed.json')];
    const missing = join(folder, 'missing.csv');
    const words = [bad, kitchen, missing, bath, ...LITTLE, '--jobs', '2', '--out', out, '--summary', summary];
    const { status, stdout, stderr } = bundled(...words);
    expect(status).toBe(1);
    expect(stderr).toMatch(/bad\.csv: error: Row 2, opening_w/);
    expect(stdout).toContain('4 orders: 2 made, 0 unchanged, 2 failed');
    expect(stdout).toContain(`failed:\n  ${bad}\n  ${missing}\n`);
    expect(stdout.match(/^\d\/4 /gm)).toHaveLength(4);
    expect(readdirSync(out).toSorted()).toEqual(['bath', 'kitchen']);
    expect(summaryOf(summary)).toMatchObject({ made: 2, failed: 2, drawers: 8, jigs: 2 });
    expect(states(summary)).toEqual(['failed', 'made', 'failed', 'made']);
    expect(summaryOf(summary).orders[2]?.reason).toContain('there is no such file');
  });
});

describe('overhang make again', () => {
  const out = join(folder, 'again');
  const summary = join(folder, 'again.json');
  const again = (...words: readonly string[]) =>
    call('make', kitchen, bath, '--out', out, '--summary', summary, ...LITTLE, ...words);

  test('makes only the order whose text, options or files have changed', async () => {
    await again();
    expect(states(summary)).toEqual(['made', 'made']);
    const first = bytesIn(out);
    await again();
    expect(states(summary)).toEqual(['unchanged', 'unchanged']);
    expect(bytesIn(out)).toEqual(first);

    writeFileSync(bath, ORDER.replace('10 1/4', '9 1/2'));
    await again();
    expect(states(summary)).toEqual(['unchanged', 'made']);

    rmSync(join(out, 'kitchen', 'parts.csv'));
    await again();
    expect(states(summary)).toEqual(['made', 'unchanged']);
    writeFileSync(join(out, 'kitchen', 'parts.csv'), 'cut short');
    await again();
    expect(states(summary)).toEqual(['made', 'unchanged']);
    expect(faultsOf(join(out, 'kitchen'))).toEqual([]);
  });

  test.each([
    ['--date', '2031-05-20'],
    ['--machine', 'laser-3'],
    ['--standard', 'face-frame-side-mount'],
    ['--jigs-share', 'fewest'],
    ['--lists', 'parts'],
    ['--units', 'mm'],
  ])('makes all anew with other options: %s %s', async (...words) => {
    await again();
    const { out: said } = await again(...words);
    expect(said).not.toContain('unchanged  ');
  });

  test('makes all with --again, the same bytes', async () => {
    await again();
    const first = bytesIn(out);
    await again('--again');
    expect(states(summary)).toEqual(['made', 'made']);
    expect(bytesIn(out)).toEqual(first);
  });

  test('keeps the earlier output of an order that fails now', async () => {
    await again();
    const before = bytesIn(join(out, 'bath'));
    writeFileSync(bath, ORDER.replace('18,5 1/2', 'wide,5 1/2'));
    const { code } = await again();
    expect({ code, states: states(summary) }).toEqual({ code: 1, states: ['unchanged', 'failed'] });
    expect(bytesIn(join(out, 'bath'))).toEqual(before);
    writeFileSync(bath, ORDER);
  });

  test('says of one order that it is unchanged', async () => {
    const one = join(folder, 'single');
    await call('make', kitchen, '--out', one, ...LITTLE);
    const { code, out: said } = await call('make', kitchen, '--out', one, ...LITTLE);
    expect(code).toBe(0);
    expect(said).toMatch(/^unchanged: \d+ files of this very order are in .*; --again makes them again/);
  });

  test('does not touch a folder or a file that is not ours, and makes the others', async () => {
    for (const [zip, name] of [
      [[], 'kitchen'],
      [['--zip'], 'kitchen.zip'],
    ] as const) {
      const place = join(folder, `theirs${zip.join('')}`);
      mkdirSync(join(place), { recursive: true });
      if (zip.length === 0) mkdirSync(join(place, name));
      const letter = zip.length === 0 ? join(place, name, 'letter.txt') : join(place, name);
      writeFileSync(letter, 'keep me');
      const { code, out: said } = await call('make', kitchen, bath, '--out', place, ...LITTLE, ...zip);
      expect(code).toBe(1);
      expect(said).toMatch(/FAILED.*(holds other files|did not write)/);
      expect(said).toContain('1 made, 0 unchanged, 1 failed');
      expect(readFileSync(letter, 'utf8')).toBe('keep me');
    }
  });
});

describe('overhang make of hostile orders', () => {
  test('names of files lead nowhere else and take no other’s place', async () => {
    const names = ['con', 'CON', '..', '-rf', '=1+1', 'a'.repeat(200)];
    const orders = names.map((name) => order(`hostile/${name}.csv`));
    const out = join(folder, 'hostile-out');
    const { code } = await call('make', ...orders.map((path) => path), '--out', out, ...LITTLE);
    expect(code).toBe(0);
    expect(readdirSync(out).toSorted()).toEqual(
      ['1+1', '_CON-2', '_con', 'a'.repeat(80), 'order', 'rf'].toSorted(),
    );
    expect(existsSync(join(folder, 'manifest.json'))).toBe(false);
  });

  test('no cell of a table begins as a formula does, but numbers are numbers', async () => {
    const cells = ['=1+1', '+1', '-1+2', '@SUM(A1)', '=HYPERLINK("http://x";"y")'];
    const rows = cells.map((cell, index) =>
      [cell, cell, '1', 'full overlay', '18', String(5 + index)].map(
        (word) => `"${word.replaceAll('"', '""')}"`,
      ),
    );
    const path = order(
      'formulas.csv',
      ['cabinet,drawer,qty,style,opening_w,opening_h', ...rows.map((row) => row.join(','))].join('\n'),
    );
    const out = join(folder, 'formulas');
    const { code, err } = await call('make', path, '--out', out, '--paper', 'none', '--formats', 'none');
    expect({ code, err: err.includes('error') }).toEqual({ code: 0, err: false });
    for (const name of ['fit.csv', 'schedule.csv', 'parts.csv']) {
      const { data } = Papa.parse<string[]>(readFileSync(join(out, name), 'utf8').trimEnd());
      const runs = data.flat().filter((cell) => /^[=+\-@\t\r]/.test(cell) && !/^-\d+(\.\d+)?$/.test(cell));
      expect(runs, `cells of ${name}`).toEqual([]);
    }
    const [, first] = Papa.parse<string[]>(readFileSync(join(out, 'fit.csv'), 'utf8')).data;
    expect(first?.[1]).toBe("'=1+1");
    expect(Number(first?.[5])).toBeGreaterThan(0);
  });
});
