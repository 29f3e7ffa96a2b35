import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutFileName, distinctNames, isFileName, safeName } from '../../core/files/file-name.ts';

const SEED = 81_204;

test('DXF-3: cutFileName puts the unit into the name of the file', () => {
  expect(cutFileName('B1-plate', 'mm', 'dxf')).toBe('B1-plate_mm.dxf');
  expect(cutFileName('B1-plate', 'in', 'dxf')).toBe('B1-plate_in.dxf');
});

describe('safeName', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['Kitchen', 'Kitchen'],
    ['Küche Müller, 2. Stock', 'Küche Müller, 2. Stock'],
    ['Smith / kitchen: "big"?', 'Smith - kitchen- -big-'],
    ['../../etc/passwd', 'etc-passwd'],
    ['.hidden', 'hidden'],
    ['-rf', 'rf'],
    ['trailing. . ', 'trailing'],
    ['tab\tand\nline', 'tab-and-line'],
    ['nul\u0000byte', 'nul-byte'],
    ['=HYPERLINK("x")', 'HYPERLINK(-x-)'],
    ['', 'order'],
    ['...', 'order'],
    ['???', 'order'],
    ['kitchen.app/', 'kitchen.app-'],
    ['  ..  ', 'order'],
  ];
  test.each(cases)('makes %j into %j', (text, name) => {
    expect(safeName(text)).toBe(name);
  });

  // Microsoft, "Naming Files, Paths, and Namespaces": reserved names, also followed by an extension.
  test.each(['con', 'PRN', 'Aux', 'nul', 'com1', 'COM9', 'lpt¹', 'LPT0', 'con.txt', 'nul .tar.gz'])(
    'does not leave the device %j of Windows as it is',
    (name) => {
      expect(safeName(name)).toBe(`_${name}`);
    },
  );

  test('leaves names that only look like devices', () => {
    expect(['console', 'com10', 'auxiliary', 'nullo'].map(safeName)).toEqual([
      'console',
      'com10',
      'auxiliary',
      'nullo',
    ]);
  });

  test(`gives what every system takes for 2000 random texts, seed ${SEED}`, () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        const name = safeName(text);
        // The rules of the same page, and the 255 bytes of ext4 (common practice, no source).
        // oxlint-disable-next-line no-control-regex
        expect(name).not.toMatch(/[<>:"/\\|?*\u0000-\u001f]|[ .]$|^\.|^-/);
        expect(name.length).toBeGreaterThan(0);
        expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(121);
        // No half of a surrogate pair.
        expect(name).not.toMatch(/\p{Surrogate}/u);
        expect(isFileName(name)).toBe(true);
        expect(safeName(name)).toBe(name);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
});

describe('distinctNames', () => {
  test('numbers names that some system takes for the same, and never hits one that is there', () => {
    const distinct = distinctNames();
    const given = [
      'kitchen',
      'Kitchen',
      'kitchen-2',
      'kitchen',
      'Stra\u00dfe',
      'STRASSE',
      'Ku\u0308che',
      'K\u00fcche',
    ];
    expect(given.map(distinct)).toEqual([
      'kitchen',
      'Kitchen-2',
      'kitchen-2-2',
      'kitchen-3',
      'Stra\u00dfe',
      'STRASSE-2',
      'Ku\u0308che',
      'K\u00fcche-2',
    ]);
  });
});
