import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { isAllowed } from '../../electron/release/licences.ts';
import { temporaryFolder } from '../cli/temporary.ts';
import { BILL, BUILDS, filesOf, makeBuild, packagesInMaps, pathsOf, readBill, type Bill } from './builds.ts';

const folder = temporaryFolder();
const builds = new Map<string, { readonly outDir: string; readonly bill: Bill; readonly notices: string }>();

beforeAll(async () => {
  for (const name of BUILDS) {
    const outDir = await makeBuild(name, folder);
    const notices = readFileSync(join(outDir, 'THIRD-PARTY-NOTICES.txt'), 'utf8');
    builds.set(name, { outDir, bill: readBill(outDir), notices });
  }
});

const made = (name: string) => {
  const found = builds.get(name);
  if (found === undefined) throw new Error(`no build ${name}`);
  return found;
};

/** What no source map names: data, and what the bundler adds. */
const UNMAPPED: ReadonlySet<string> = new Set([
  'node_modules/@expo-google-fonts/ibm-plex-sans',
  'node_modules/highs',
  'node_modules/rolldown',
  'node_modules/vite',
]);

describe.for(BUILDS)('papers of the %s build', (name) => {
  test('releasePapers tells of every package that the source maps name', () => {
    const { outDir, bill } = made(name);
    const inMaps = packagesInMaps(outDir);
    expect([...inMaps].filter((path) => !pathsOf(bill).includes(path))).toEqual([]);
    // The other way: nothing is told that is not there.
    const more = pathsOf(bill).filter((path) => !inMaps.has(path));
    expect(more.filter((path) => !UNMAPPED.has(path))).toEqual([]);
  });

  test('releasePapers tells of every package that a data file of the build is from', () => {
    const { outDir, bill } = made(name);
    const data = filesOf(outDir).filter((file) => /\.(wasm|icc|ttf|woff2)$/.test(file));
    expect(data.length > 0).toBe(name === 'renderer' || name === 'cli');
    for (const file of data) {
      const bytes = readFileSync(file);
      const origin = pathsOf(bill).find((path) =>
        filesOf(path).some(
          (other) => other.endsWith(file.slice(file.lastIndexOf('.'))) && readFileSync(other).equals(bytes),
        ),
      );
      expect({ file, origin }).toEqual({ file, origin: expect.stringContaining('node_modules/') });
    }
  });

  test('noticesText has a heading for every package and every licence file of it, word for word', () => {
    const { bill, notices } = made(name);
    for (const { name: packageName, version, properties } of bill.components) {
      expect(notices).toContain(`\n${packageName} ${version} (`);
      const path = properties[0]?.value ?? '';
      for (const file of ['LICENSE', 'LICENSE_FONT', 'NOTICE', 'license.txt']) {
        if (!existsSync(join(path, file))) continue;
        const text = readFileSync(join(path, file), 'utf8').replaceAll('\r\n', '\n').trim();
        expect(notices).toContain(text);
      }
    }
  });

  test('no licence outside the list, by the word of the lock file or of the package', () => {
    for (const { name: packageName, licenses } of made(name).bill.components) {
      expect(licenses).toHaveLength(1);
      const [choice] = licenses;
      const expression = JSON.stringify(choice).replace(/^\{("license":\{"id":|"expression":)"|"\}+$/g, '');
      expect({ packageName, expression, allowed: isAllowed(expression) }).toEqual({
        packageName,
        expression,
        allowed: true,
      });
    }
  });

  test('softwareBill: CycloneDX 1.5 (its rules from memory), no time, every reference known and used once', () => {
    const { bill } = made(name);
    expect(bill).toMatchObject({ bomFormat: 'CycloneDX', specVersion: '1.5', version: 1 });
    expect(bill.serialNumber).toMatch(
      /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/,
    );
    expect(bill.metadata.timestamp).toBeUndefined();
    expect(bill.metadata.component).toMatchObject({ type: 'application', name: 'overhang' });
    for (const { type, hashes } of bill.components) {
      expect(type).toBe('library');
      for (const { alg, content } of hashes) {
        expect([alg, content.length]).toEqual(['SHA-512', 128]);
        expect(content).toMatch(/^[0-9a-f]+$/);
      }
    }
    const refs = [
      bill.metadata.component['bom-ref'],
      ...bill.components.flatMap((each) => [
        each['bom-ref'],
        ...(each.components ?? []).map((inner) => inner['bom-ref']),
      ]),
    ];
    expect(new Set(refs).size).toBe(refs.length);
    for (const { ref, dependsOn = [] } of bill.dependencies) {
      expect(refs).toEqual(expect.arrayContaining([ref, ...dependsOn]));
    }
  });
});

describe('papers', () => {
  test('softwareBill: version, address and hash of every package are those that npm itself tells', () => {
    const told = execFileSync(
      process.platform === 'win32' ? 'npm.cmd' : 'npm',
      ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only', '--offline'],
      { encoding: 'utf8', maxBuffer: 2 ** 26, shell: process.platform === 'win32' },
    );
    const npm = new Map(NPM_BILL.parse(JSON.parse(told)).components.map((each) => [each.purl, each]));
    expect(npm.size).toBeGreaterThan(300);
    for (const name of BUILDS) {
      for (const { purl, version, name: packageName, hashes, licenses } of made(name).bill.components) {
        const theirs = npm.get(purl);
        expect({ packageName, version, hashes }).toEqual({
          packageName: theirs?.name,
          version: theirs?.version,
          hashes: theirs?.hashes,
        });
        // npm says nothing of a package whose package.json names no licence.
        if (theirs?.licenses !== undefined) expect(licenses).toEqual(theirs.licenses);
      }
    }
  });

  test('the page holds the fonts, the solvers and the engraving font, and their notices say so', () => {
    const { notices } = made('renderer');
    expect(notices).toContain('SIL OPEN FONT LICENSE Version 1.1');
    expect(notices).toContain('IBM Corp. with Reserved Font Name "Plex"');
    expect(notices).toContain('A. V. Hershey while working at the U. S.');
    expect(notices).toMatch(/\nhighs [\d.]+ \(MIT\)\n/);
    expect(notices).toMatch(/\nmanifold-3d [\d.]+ \(Apache-2\.0\)\n/);
    expect(notices).toContain('It holds METIS (Apache-2.0; the text of Apache-2.0 is at the end).');
  });

  test('what a package is said to hold is in its binary', () => {
    const binary = (path: string): string => readFileSync(path, 'latin1');
    expect(binary('node_modules/manifold-3d/manifold.wasm')).toContain('Clipper2Lib');
    // Of the solver's libraries only its choice of orderings can be read.
    expect(binary('node_modules/highs/build/highs.wasm')).toContain('"metis", "amd" or "rcm"');
  });

  test('the same sources give the same papers', async () => {
    const again = await makeBuild('host', join(folder, 'again'));
    for (const file of ['sbom.cdx.json', 'THIRD-PARTY-NOTICES.txt']) {
      expect(readFileSync(join(again, file))).toEqual(readFileSync(join(made('host').outDir, file)));
    }
  });
});

const NPM_BILL = BILL.pick({}).extend({
  components: BILL.shape.components.element
    .pick({ name: true, version: true, purl: true })
    .extend({
      hashes: BILL.shape.components.element.shape.hashes.optional(),
      licenses: BILL.shape.components.element.shape.licenses.optional(),
    })
    .array(),
});
