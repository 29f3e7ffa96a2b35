import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import packageJson from '../../package.json';

const FOLDER = '.github/workflows';
const workflows = readdirSync(FOLDER).map(
  (name) => [name, readFileSync(join(FOLDER, name), 'utf8')] as const,
);

/** What a workflow runs: each `run:` on its line, and those that are folded over several. */
const runsOf = (text: string): readonly string[] =>
  [...text.matchAll(/^ *(?:- )?run: (?:>-\n((?: {10}.*\n)+)|(.*)$)/gm)].map(([, folded, line]) =>
    (folded ?? line ?? '').replaceAll(/\s+/g, ' ').trim(),
  );

describe.for(workflows)('the workflow %s', ([, text]) => {
  test('may read the sources and nothing else, and leaves no credentials in the checkout', () => {
    const permissions = [...text.matchAll(/^ *permissions:\n((?: +\w.*\n)+)/gm)].map(([, lines = '']) =>
      lines.trim(),
    );
    expect(permissions).toEqual(['contents: read']);
    const checkouts = text.match(/uses: actions\/checkout@/g) ?? [];
    expect(text.match(/persist-credentials: false/g) ?? []).toHaveLength(checkouts.length);
    expect(text).not.toContain('secrets.');
  });

  test('pins each action to a version, and takes only the platform’s own', () => {
    const uses = [...text.matchAll(/uses: (\S+)/g)].map(([, name = '']) => name);
    expect(uses.length).toBeGreaterThan(0);
    for (const name of uses) {
      if (name.startsWith('./')) expect(readdirSync(FOLDER)).toContain(basename(name));
      else expect(name).toMatch(/^actions\/[a-z-]+@v\d+$/);
    }
  });

  test('every npm script and every folder of tests that it names is there', () => {
    const runs = runsOf(text);
    expect(runs.length).toBeGreaterThan(0);
    for (const run of runs) {
      const script = /\bnpm run (?:-s )?([\w:]+)/.exec(run)?.[1];
      if (script !== undefined) expect(Object.keys(packageJson.scripts)).toContain(script);
      const paths = [...run.matchAll(/\btests\/[\w./-]+/g)].map(([path]) => path);
      expect(paths.filter((path) => !existsSync(path))).toEqual([]);
    }
  });

  test('nothing that anyone else may write, a title or a branch, gets into a command', () => {
    for (const run of runsOf(text)) {
      const put = [...run.matchAll(/\$\{\{ *([\w.]+) *\}\}/g)].map(([, name = '']) => name);
      expect(put.filter((name) => !name.startsWith('matrix.'))).toEqual([]);
    }
  });

  test('every job stops by itself', () => {
    const jobs = text.slice(text.indexOf('\njobs:'));
    const running = jobs.match(/^ {4}runs-on:/gm) ?? [];
    expect(jobs.match(/^ {4}timeout-minutes: \d+$/gm) ?? []).toHaveLength(running.length);
  });
});

describe('the workflows together', () => {
  const text = (name: string): string => workflows.find(([file]) => file === name)?.[1] ?? '';

  test('checks.yml runs on every push: the whole suite with Electron’s binary and a display, and three systems', () => {
    const checks = text('checks.yml');
    expect(checks).toMatch(/^on:\n {2}push:\n {4}branches: \['\*\*'\]\n/m);
    const runs = runsOf(checks);
    expect(runs).toContain('xvfb-run --auto-servernum npm test');
    expect(runs.indexOf('node node_modules/electron/install.js')).toBeLessThan(
      runs.indexOf('xvfb-run --auto-servernum npm test'),
    );
    for (const needed of [
      'npm run check',
      'npm run build:cli',
      'npm run build:host',
      'npm run dist -- --dir',
    ]) {
      expect(runs).toContain(needed);
    }
    expect([...checks.matchAll(/system: (\w+)/g)].map(([, system]) => system)).toEqual([
      'Linux',
      'Windows',
      'macOS',
    ]);
    expect(checks).toMatch(/tests\/desktop/);
  });

  test('installers.yml runs on tags, after the checks, and keeps installers, notices and bill', () => {
    const installers = text('installers.yml');
    expect(installers).toMatch(/^on:\n {2}push:\n {4}tags: \['v\*'\]\n/m);
    expect(installers.match(/needs: checks/g)).toHaveLength(2);
    expect([...installers.matchAll(/system: (\w+)/g)].map(([, system]) => system)).toEqual([
      'Linux',
      'Windows',
      'macOS',
    ]);
    for (const kept of ['AppImage', 'deb', 'exe', 'dmg'])
      expect(installers).toContain(`dist/installers/*.${kept}`);
    for (const kept of ['THIRD-PARTY-NOTICES.txt', 'sbom.cdx.json'])
      expect(installers).toContain(`dist/release/${kept}`);
    expect(installers.match(/if-no-files-found: error/g)).toHaveLength(3);
  });
});
