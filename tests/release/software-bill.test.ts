import { describe, expect, test } from 'vitest';
import { softwareBill } from '../../electron/release/software-bill.ts';
import type { BundledPackage } from '../../electron/release/types.ts';
import { BILL } from './builds.ts';

const PROGRAM = { name: 'program', version: '1.2.3', license: 'MIT' };
const PACKAGE: BundledPackage = {
  path: 'node_modules/@scope/part',
  name: '@scope/part',
  version: '4.5.6',
  licence: 'MIT',
  // SHA-512 of the empty text, from FIPS 180-4's examples, in both writings.
  integrity:
    'sha512-z4PhNX7vuL3xVChQ1m2AB9Yg5AULVxXcg/SpIdNs6c5H0NE8XYXysP+DGNKHfuwvY7kxvUdBeoGlODJ6+SfaPg==',
  notices: ['notice'],
  holds: [],
};

describe('softwareBill', () => {
  const read = (packages: readonly BundledPackage[], epoch?: string) =>
    BILL.parse(JSON.parse(softwareBill(PROGRAM, packages, epoch)));

  test('writes a hash in hexadecimal, and a scope in a package URL as %40', () => {
    const [component] = read([PACKAGE]).components;
    expect(component).toMatchObject({
      purl: 'pkg:npm/%40scope/part@4.5.6',
      licenses: [{ license: { id: 'MIT' } }],
      hashes: [
        {
          alg: 'SHA-512',
          content:
            'cf83e1357eefb8bdf1542850d66d8007d620e4050b5715dc83f4a921d36ce9ce' +
            '47d0d13c5d85f2b0ff8318d2877eec2f63b931bd47417a81a538327af927da3e',
        },
      ],
    });
  });

  test('an expression of several licences is an expression, no identifier', () => {
    const [component] = read([{ ...PACKAGE, licence: 'MIT AND OFL-1.1' }]).components;
    expect(component?.licenses).toEqual([{ expression: 'MIT AND OFL-1.1' }]);
  });

  test('has the time of SOURCE_DATE_EPOCH, and none without', () => {
    // RFC 3339's writing of 10^9 s after 1970, a known instant.
    expect(read([PACKAGE], '1000000000').metadata.timestamp).toBe('2001-09-09T01:46:40.000Z');
    expect(read([PACKAGE], '').metadata.timestamp).toBeUndefined();
    expect(() => softwareBill(PROGRAM, [PACKAGE], 'today')).toThrow(
      'SOURCE_DATE_EPOCH is "today"; write a whole number of seconds since 1970.',
    );
  });

  test('its serial number is of its contents: the same for the same, another for others', () => {
    const serial = (packages: readonly BundledPackage[]) => read(packages).serialNumber;
    expect(serial([PACKAGE])).toBe(serial([{ ...PACKAGE }]));
    expect(serial([PACKAGE])).not.toBe(serial([{ ...PACKAGE, version: '4.5.7' }]));
    // RFC 9562: version 5, variant 10.
    expect(serial([PACKAGE])).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-/);
  });

  test('refuses a hash that is too weak', () => {
    expect(() => softwareBill(PROGRAM, [{ ...PACKAGE, integrity: 'sha1-AAAA' }], undefined)).toThrow(
      'sha1-AAAA is no hash that a bill may have; it takes SHA-256, -384, -512.',
    );
  });
});
