import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { readArguments } from '../../electron/cli/arguments.ts';
import packageJson from '../../package.json';
import { bundleCli } from '../cli/bundle.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { commands, exampleOrder, README, section } from './readme.ts';

const folder = temporaryFolder();
const PREFIX = 'npm run -s overhang -- ';

let main = '';
beforeAll(async () => {
  main = await bundleCli(folder);
  mkdirSync(join(folder, 'orders'));
  writeFileSync(join(folder, 'kitchen.csv'), exampleOrder());
  // One drawer each: what becomes of many is the business of tests/cli.
  const small = exampleOrder().split('\n').slice(0, 2).join('\n');
  for (const name of ['pantry', 'study']) writeFileSync(join(folder, 'orders', `${name}.csv`), small);
});

describe('the commands of the readme', () => {
  test('the first two are those of a fresh machine', () => {
    expect(commands().slice(0, 2)).toEqual(['npm ci && npm run demo', 'npm ci && npm test']);
  });

  test('each is of a kind that is known here, and its script is in package.json', () => {
    for (const command of commands()) {
      expect(command).toMatch(/^(npm ci && npm (run \w+|test)|npm run -s overhang -- .+)$/);
      const script = /npm run (?:-s )?(\w+)|npm (test)/.exec(command)?.slice(1).find(Boolean) ?? '';
      expect(Object.keys(packageJson.scripts)).toContain(script);
    }
    for (const [, script = ''] of README.matchAll(/`npm (?:run (?:-s )?)?(\w+)`/g)) {
      expect(Object.keys(packageJson.scripts)).toContain(script);
    }
  });

  // In the order of the page and in one folder, as a reader would, by the same shell.
  const calls = commands().filter((command) => command.startsWith(PREFIX));
  test.sequential.for(calls)('%s', (command) => {
    const words = command.slice(PREFIX.length);
    const { status, stdout, stderr } = spawnSync(`"${process.execPath}" "${main}" ${words}`, {
      cwd: folder,
      encoding: 'utf8',
      shell: true,
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const out = /--out (\S+)/.exec(words)?.[1];
    if (out !== undefined) expect(readdirSync(folder)).toContain(out);
    const summary = /--summary (\S+)/.exec(words)?.[1];
    if (summary !== undefined) {
      const told: unknown = JSON.parse(readFileSync(join(folder, summary), 'utf8'));
      expect(told).toMatchObject({ made: 2, failed: 0 });
    }
    if (words.startsWith('check')) {
      // What the readme says that it answers.
      const [, answer = ''] = /^answers `([^`]+)`/m.exec(README) ?? [];
      expect(answer).not.toBe('');
      expect(stdout).toContain(answer);
    }
  });

  test('the folders that they make have what the readme says is in them', () => {
    const [files = ''] = section('The command line').split('\n### ');
    const told = [...files.matchAll(/^\| (`[^|]+`) +\| (.+?) +\|$/gm)];
    expect(told.length).toBeGreaterThanOrEqual(10);
    const made = ['kitchen-jigs', 'calibrate'].map((name) => join(folder, name));
    // What is on request, but for the coupon, is the business of tests/cli.
    const names = told
      .filter(([, name = '', meaning = '']) => !meaning.startsWith('on request') || name.includes('coupon/'))
      .flatMap(([, name = '']) => [...name.matchAll(/`([^`]+)`/g)].map(([, path = '']) => path));
    expect(names.filter((name) => !made.some((place) => existsSync(join(place, name))))).toEqual([]);
  });
});

describe('what the readme says in passing', () => {
  test('every option is one that the command line takes, with the value that stands there', () => {
    const options = [...README.matchAll(/`(--[a-z][^`]*)`/g)].map(([, option = '']) => option);
    expect(options.length).toBeGreaterThan(10);
    for (const option of options) {
      // The option alone says nothing of its value.
      const words = option === '--summary' ? [] : option.split(' ');
      expect(() => readArguments(['make', 'kitchen.csv', '--out', 'jigs', ...words])).not.toThrow();
    }
  });

  test('every file that it names is in the repository, and every picture is small', () => {
    const links = [...README.matchAll(/\]\(([^)#]+)\)/g)].map(([, path = '']) => path);
    const named = [...README.matchAll(/`((?:assets|tests|\.github)\/[^`]*|[A-Z]+(?:\.md)?)`/g)].map(
      ([, path = '']) => path,
    );
    expect(links.length).toBeGreaterThanOrEqual(5);
    const paths = [...links, ...named.filter((name) => /[/.]|^LICENSE$/.test(name))];
    expect(paths.filter((path) => !existsSync(path))).toEqual([]);
    expect(links.filter((path) => statSync(path).size >= 120_000)).toEqual([]);
  });

  test('every place on the page that it points to is there', () => {
    const headings = new Set(
      [...README.matchAll(/^#+ (.+)$/gm)].map(([, title = '']) => title.toLowerCase().replaceAll(' ', '-')),
    );
    const targets = [...README.matchAll(/\]\(#([^)]+)\)/g)].map(([, target = '']) => target);
    expect(targets.length).toBeGreaterThan(3);
    expect(targets.filter((target) => !headings.has(target))).toEqual([]);
  });

  test('every page, stage and command of the program is called as the program calls it', () => {
    const names = new Set([...README.matchAll(/\b_([A-Z][A-Za-z ]+)_\b/g)].map(([, name = '']) => name));
    expect(names.size).toBeGreaterThan(8);
    const sources = readdirSync('renderer', { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => readFileSync(join('renderer', name), 'utf8'));
    const isShown = (name: string): boolean => {
      const shown = new RegExp(`['"\`>]${name}['"\`<]`);
      return sources.some((source) => shown.test(source));
    };
    expect([...names].filter((name) => !isShown(name))).toEqual([]);
  });
});
