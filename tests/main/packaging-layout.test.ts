import { extractFile, listPackage } from '@electron/asar';
import { build, Platform } from 'electron-builder';
import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { build as bundle } from 'vite';
import configuration from '../../electron-builder.config.ts';
import { writeInstallerPapers } from '../../electron/release/installer-papers.ts';
import packageJson from '../../package.json';
import { temporaryFolder } from '../cli/temporary.ts';
import { BILL } from '../release/builds.ts';
import { makePage } from './fakes/page.ts';

// electron-builder packs the program around a stand-in for Electron's binary: this shows what goes into the
// package and how the fuses are set, not that the program runs.

/** Marks the fuses in the binary; then come the version, their number, and a character for each. From @electron/fuses. */
const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

/** Fuses in the order of the binary, as they are before anyone has set them: `1` is on. From memory. */
const FUSES = [
  'runAsNode',
  'enableCookieEncryption',
  'enableNodeOptionsEnvironmentVariable',
  'enableNodeCliInspectArguments',
  'enableEmbeddedAsarIntegrityValidation',
  'onlyLoadAppFromAsar',
  'loadBrowserProcessSpecificV8Snapshot',
  'grantFileProtocolExtraPrivileges',
] as const;

const ROOT = resolve(import.meta.dirname, '../..');
const folder = temporaryFolder();
const packed = join(folder, 'out/linux-unpacked');
const archive = join(packed, 'resources/app.asar');

beforeAll(async () => {
  const standIn = join(folder, 'electron');
  mkdirSync(join(standIn, 'resources'), { recursive: true });
  writeFileSync(join(standIn, 'electron'), `${SENTINEL}\u0001${String.fromCharCode(FUSES.length)}10110001`, {
    mode: 0o755,
  });
  writeFileSync(join(standIn, 'version'), packageJson.devDependencies.electron);
  const project = join(folder, 'project');
  makePage(join(project, 'dist'));
  for (const part of ['main', 'preload']) {
    await bundle({
      configFile: `vite.${part}.config.ts`,
      build: { outDir: join(project, 'dist', part), emptyOutDir: true },
    });
  }
  // Stands in for the page's: a package that neither of the other builds has.
  const bill = [{ properties: [{ name: 'cdx:npm:package:path', value: 'node_modules/pdfkit' }] }];
  writeFileSync(join(project, 'dist/renderer/sbom.cdx.json'), JSON.stringify({ components: bill }));
  cpSync(join(ROOT, 'LICENSE'), join(project, 'LICENSE'));
  cpSync(join(ROOT, 'assets/icons'), join(project, 'assets/icons'), { recursive: true });
  mkdirSync(join(project, 'dist/cli'));
  writeFileSync(join(project, 'dist/cli/main.js'), 'no part of the desktop program');
  writeFileSync(join(project, 'package.json'), JSON.stringify({ ...packageJson, main: 'dist/main/main.js' }));
  await build({
    projectDir: project,
    targets: Platform.LINUX.createTarget('dir'),
    publish: 'never',
    config: {
      ...configuration,
      electronVersion: packageJson.devDependencies.electron,
      electronDist: standIn,
      directories: { ...configuration.directories, output: join(folder, 'out') },
    },
  });
});

describe('the package', () => {
  test('holds the built program and its page, and nothing else', () => {
    const files = listPackage(archive, { isPack: false })
      .map((path) => path.replaceAll('\\', '/'))
      .filter((path) => /\.[a-z]+$/.test(path) && !path.endsWith('.asar'));
    expect(files.toSorted()).toEqual([
      '/dist/main/main.js',
      '/dist/preload/preload.cjs',
      '/dist/renderer/.hidden.js',
      '/dist/renderer/assets/main-Ab3_x.js',
      '/dist/renderer/assets/main-Ab3_xyz9.js',
      '/dist/renderer/assets/main.css',
      '/dist/renderer/assets/notes.txt',
      '/dist/renderer/index.html',
      '/package.json',
    ]);
    expect(readdirSync(join(packed, 'resources')).filter((name) => name.startsWith('app'))).toEqual([
      'app.asar',
    ]);
  });

  test('has beside it our licence, the notices and the bill of all its builds and of Electron', () => {
    const resource = (name: string): string => readFileSync(join(packed, 'resources', name), 'utf8');
    expect(resource('LICENSE.overhang.txt')).toBe(readFileSync(join(ROOT, 'LICENSE'), 'utf8'));
    const bill = BILL.parse(JSON.parse(resource('sbom.cdx.json')));
    expect(bill.components.map(({ name }) => name)).toEqual(['electron', 'pdfkit', 'zod']);
    for (const { name, version } of bill.components) {
      expect(resource('THIRD-PARTY-NOTICES.txt')).toContain(`\n${name} ${version} (`);
    }
    expect(resource('THIRD-PARTY-NOTICES.txt')).toContain('LICENSES.chromium.html');
  });

  test('writeInstallerPapers says what to build where a build has no bill', () => {
    expect(() => writeInstallerPapers(ROOT, folder)).toThrow(
      /sbom\.cdx\.json is missing\. Build first: npm run build:renderer && npm run build:main/,
    );
  });

  test('starts with the main process, whose preload and page are where it looks for them', () => {
    const inside: unknown = JSON.parse(extractFile(archive, 'package.json').toString('utf8'));
    expect(inside).toMatchObject({ name: 'overhang', type: 'module', main: 'dist/main/main.js' });
    const main = extractFile(archive, 'dist/main/main.js').toString('utf8');
    expect(main).toContain('preload/preload.cjs');
    expect(main).toMatch(/join\(import\.meta\.dirname, "\.\."\)/);
  });

  test('needs no module at run time but Electron and those of Node', () => {
    const main = extractFile(archive, 'dist/main/main.js').toString('utf8');
    const imported = [...main.matchAll(/^import .* from "([^"]+)";$/gm)].map(([, name = '']) => name);
    expect(imported.length).toBeGreaterThan(3);
    expect(imported.filter((name) => name !== 'electron' && !name.startsWith('node:'))).toEqual([]);
  });

  test('19: the fuses are set in the binary', () => {
    const name = readdirSync(packed).find((file) => file === 'overhang' || file === 'Overhang');
    const binary = readFileSync(join(packed, name ?? '')).toString('latin1');
    const wire = binary.slice(binary.indexOf(SENTINEL) + SENTINEL.length + 2);
    expect(Object.fromEntries(FUSES.map((fuse, index) => [fuse, wire[index] === '1']))).toEqual(
      configuration.electronFuses,
    );
    expect(existsSync(join(packed, 'electron'))).toBe(false);
  });
});
