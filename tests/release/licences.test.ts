import { describe, expect, test } from 'vitest';
import { isAllowed, refuseLicences } from '../../electron/release/licences.ts';
import { licenceTexts, withoutText } from '../../electron/release/licence-texts.ts';
import { packagePath } from '../../electron/release/package-path.ts';
import { readPackages } from '../../electron/release/read-package.ts';

describe('isAllowed', () => {
  // SPDX expressions; AND binds closer than OR. From memory.
  test.for([
    ['MIT', true],
    ['MIT AND OFL-1.1', true],
    ['(MIT OR GPL-3.0-only)', true],
    ['GPL-3.0-only', false],
    ['MIT AND LGPL-3.0-or-later', false],
    ['GPL-3.0-only AND MIT OR ISC', true],
    ['GPL-3.0-only OR MIT AND MPL-2.0', false],
    ['SEE LICENSE IN terms.txt', false],
    ['UNLICENSED', false],
    ['', false],
    ['Apache-2.0 WITH LLVM-exception', false],
    ['(MIT OR GPL-3.0-only) AND MPL-2.0', false],
  ] as const)('%s: %s', ([expression, allowed]) => {
    expect(isAllowed(expression)).toBe(allowed);
  });
});

describe('readPackages', () => {
  const read = (...paths: readonly string[]) => readPackages(process.cwd(), paths);

  test('gives each package once, in order of names, with what it holds', () => {
    const packages = read('node_modules/highs', 'node_modules/zod', 'node_modules/highs');
    expect(packages.map(({ name }) => name)).toEqual(['highs', 'zod']);
    expect(packages[0]?.holds.map(({ name }) => name)).toEqual(['AMD', 'METIS', 'pdqsort', 'rcm']);
  });

  test('takes a licence from its text where package.json names none', () => {
    expect(read('node_modules/png-js')[0]?.licence).toBe('MIT');
  });

  test('refuses a package that the lock file does not have', () => {
    expect(() => read('node_modules/.bin')).toThrow(
      'node_modules/.bin is in a build, and package-lock.json has no hash of it: npm ci',
    );
  });

  test('a package without a licence file gets a notice with its maker, and the text at the end', () => {
    expect(read('node_modules/dfa')[0]?.notices).toEqual([
      'Copyright (c) Devon Govett. The package has no licence file; the text of MIT is at the end.',
    ]);
    expect([...licenceTexts().keys()]).toEqual(['Apache-2.0', 'BSD-3-Clause', 'MIT']);
    expect(() => withoutText('ISC', 'node_modules/x', undefined)).toThrow(
      'node_modules/x has no file of its licence ISC; put its text into electron/release/texts.',
    );
  });

  test('refuseLicences names every package that may not be in a build, and what may', () => {
    const [zod, highs] = read('node_modules/zod', 'node_modules/highs');
    if (zod === undefined || highs === undefined) throw new Error('no packages');
    refuseLicences([zod, highs]);
    const held = { name: 'x', licence: 'GPL-2.0-only', holder: 'X' };
    expect(() =>
      refuseLicences([
        { ...zod, licence: 'MPL-2.0' },
        { ...highs, holds: [held] },
      ]),
    ).toThrow(
      /node_modules\/\S+ \((MPL-2\.0|GPL-2\.0-only)\), node_modules\/\S+ \((MPL-2\.0|GPL-2\.0-only)\)\. Allowed are 0BSD, /,
    );
  });
});

describe('packagePath', () => {
  test.for([
    ['/p/node_modules/zod/index.js', 'node_modules/zod'],
    ['/p/node_modules/@noble/hashes/sha2.js', 'node_modules/@noble/hashes'],
    ['/p/node_modules/fontkit/node_modules/clone/clone.js', 'node_modules/fontkit/node_modules/clone'],
    ['\0/p/node_modules/dfa/index.js?commonjs-module', 'node_modules/dfa'],
    ['/p/node_modules/highs/build/highs.wasm?url', 'node_modules/highs'],
    ['\0vite/preload-helper.js', 'node_modules/vite'],
    ['\0rolldown/runtime.js', 'node_modules/rolldown'],
    ['C:\\p\\node_modules\\zod\\index.js', 'node_modules/zod'],
    ['../node_modules/highs/build/highs.wasm', 'node_modules/highs'],
    ['/p/core/pipeline.ts', null],
    ['/p/my_node_modules/a/b.ts', null],
    ['/p/assets/orders/node_modules.csv?raw', null],
  ] as const)('%j is from %s', ([id, path]) => {
    expect(packagePath(id)).toBe(path);
  });
});
