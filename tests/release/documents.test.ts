import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import packageJson from '../../package.json';
import lock from '../../package-lock.json';

const DEVELOPERS = readFileSync('DEVELOPERS.md', 'utf8');
const CHANGELOG = readFileSync('assets/CHANGELOG.md', 'utf8');

const missing = (paths: readonly string[]): readonly string[] => paths.filter((path) => !existsSync(path));

describe('DEVELOPERS.md', () => {
  const [, table = ''] = /### Security\n([\s\S]*?)\n## /.exec(DEVELOPERS) ?? [];
  const rows = [...table.matchAll(/^\| (\d+) [^|]*\|([^|]*)\|([^|]*)\|$/gm)].map(
    ([, number = '', by = '', tests = '']) => ({ number: Number(number), by, tests }),
  );
  const files = (cell: string): readonly string[] =>
    [...cell.matchAll(/`([\w./-]+\.tsx?)`/g)].map(([, file = '']) => file);

  test('has the twenty items of the checklist, each with a test of its own but the one that none can be for', () => {
    expect(rows.map(({ number }) => number)).toEqual(Array.from({ length: 20 }, (_, index) => index + 1));
    expect(rows.filter(({ tests }) => files(tests).length === 0).map(({ number }) => number)).toEqual([16]);
  });

  test('every file that holds an item, and every test of one, is there', () => {
    for (const { by, tests } of rows) {
      expect(missing([...files(by), ...files(tests)])).toEqual([]);
      for (const file of files(tests)) expect(file).toMatch(/^tests\/main\/.+\.test\.ts$/);
    }
  });

  test('every item is in the titles of one of its tests, by its number', () => {
    for (const { number, tests } of rows) {
      // None can be for the one; of the sender the titles speak in words.
      if (number === 16 || number === 17) continue;
      const titled = files(tests).some((file) =>
        [...readFileSync(file, 'utf8').matchAll(/'(\d[\d, ]*): /g)].some(([, numbers = '']) =>
          numbers.split(', ').includes(String(number)),
        ),
      );
      expect({ number, titled }).toEqual({ number, titled: true });
    }
  });

  test('names only commands and paths that are there', () => {
    for (const [, script = ''] of DEVELOPERS.matchAll(/npm run ([\w:]+)/g)) {
      expect(Object.keys(packageJson.scripts)).toContain(script);
    }
    // A name with a star, `plan-*.ts`, is no path.
    const paths = [
      ...DEVELOPERS.matchAll(/`((?:core|electron|shared|renderer|tests|assets|\.github)\/[\w./-]+)`/g),
    ].map(([, path = '']) => path);
    expect(paths.length).toBeGreaterThan(20);
    expect(missing(paths)).toEqual([]);
  });
});

describe('assets/CHANGELOG.md', () => {
  test('begins with the version of package.json, and its versions go down', () => {
    const versions = [...CHANGELOG.matchAll(/^## (\d+)\.(\d+)\.(\d+)$/gm)].map((match) =>
      match.slice(1).map(Number),
    );
    expect(versions[0]?.join('.')).toBe(packageJson.version);
    const weight = ([major = 0, minor = 0, patch = 0]: readonly number[]) =>
      (major * 1e3 + minor) * 1e3 + patch;
    const weights = versions.map(weight);
    expect(weights).toEqual(weights.toSorted((a, b) => b - a));
  });
});

describe('package.json', () => {
  test('Electron is pinned to one release, the same as in the lock file', () => {
    expect(packageJson.devDependencies.electron).toMatch(/^\d+\.\d+\.\d+$/);
    expect(lock.packages['node_modules/electron'].version).toBe(packageJson.devDependencies.electron);
  });
});
