import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import configuration from '../../electron-builder.config.ts';
import { publisherOf, refusePlaceholders } from '../../electron/publisher.ts';
import packageJson from '../../package.json';
import { isDocumentName, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const load = createRequire(import.meta.url);

// electron-builder's own check, which it runs before it builds anything.
const { validateSchema } = z
  .object({
    validateSchema: z.custom<(schema: unknown, data: unknown) => void>(
      (value) => typeof value === 'function',
    ),
  })
  .parse(load('app-builder-lib/out/util/config/schemaValidator'));
const schema: unknown = load('app-builder-lib/scheme.json');

describe('electron-builder configuration', () => {
  test('passes the check of electron-builder', () => {
    // The check fills in what it finds missing, so it gets a copy; a function cannot be copied.
    const { beforePack, ...rest } = configuration;
    expect(() => validateSchema(schema, { ...structuredClone(rest), beforePack })).not.toThrow();
    expect(() => validateSchema(schema, { ...configuration, electronFusses: {} })).toThrow('electronFusses');
  });

  test('19: every fuse that lets something in is off, every one that locks something is on', () => {
    expect(configuration.electronFuses).toEqual({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableCookieEncryption: true,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      grantFileProtocolExtraPrivileges: false,
      loadBrowserProcessSpecificV8Snapshot: false,
    });
    // What the last but one ask for.
    expect(configuration.asar).toBe(true);
  });

  test('makes AppImage and deb, NSIS and dmg, and sends them nowhere', () => {
    const { linux, win, mac, publish } = configuration;
    expect([linux?.target, win?.target, mac?.target, publish]).toEqual([
      ['AppImage', 'deb'],
      ['nsis'],
      ['dmg'],
      null,
    ]);
  });

  test('package.json names the built main process', () => {
    expect(packageJson).toHaveProperty('main', 'dist/main/main.js');
  });

  test.for(['linux', 'win', 'mac'] as const)(
    'on %s ties the program to its own project files, and not to every JSON or CSV file',
    (system) => {
      const associations = [
        configuration.fileAssociations ?? [],
        configuration[system]?.fileAssociations ?? [],
      ];
      const extensions = associations.flat().flatMap(({ ext }) => ext);
      expect(extensions).toEqual([PROJECT_EXTENSIONS[0]]);
      for (const extension of extensions) expect(isDocumentName(`a.${extension}`)).toBe(true);
    },
  );

  test('an association says what its system asks for: a media type, a class without spaces, a name', () => {
    const { linux, win, mac } = configuration;
    // The form of RFC 6838, and of a programmatic identifier of the registry. From memory.
    expect(linux?.fileAssociations).toHaveProperty(
      'mimeType',
      expect.stringMatching(/^application\/x-[a-z-]+$/),
    );
    expect(win?.fileAssociations).toHaveProperty('name', expect.stringMatching(/^[A-Z]\w+\.[A-Z]\w+$/));
    expect(mac?.fileAssociations).toMatchObject({ name: 'Overhang project', role: 'Editor' });
  });

  test('the icons are there, each of the kind and size that it says', () => {
    const icon = (path: string): Buffer => readFileSync(resolve(ROOT, path));
    const { linux, win, mac } = configuration;
    expect(icon(win?.icon ?? '').readUInt32LE(0)).toBe(0x00010000);
    expect(icon(String(mac?.icon)).toString('latin1', 0, 4)).toBe('icns');
    expect(icon(String(mac?.icon)).readUInt32BE(4)).toBe(icon(String(mac?.icon)).length);
    for (const size of [16, 32, 48, 64, 128, 256, 512]) {
      const picture = icon(`${linux?.icon}/${size}x${size}.png`);
      expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([size, size]);
    }
    expect(existsSync(resolve(ROOT, 'assets/icons/icon.svg'))).toBe(true);
  });
});

describe('publisherOf', () => {
  // The form of Debian Policy 5.6.2 (Maintainer) and 5.6.23 (Homepage), from memory.
  const GIVEN = {
    OVERHANG_HOMEPAGE: 'https://jigs.example/',
    OVERHANG_MAINTAINER: 'A. Shop <a@jigs.example>',
  };
  const DEB = [{ name: 'AppImage' }, { name: 'deb' }];

  test('takes the environment first, then package.json, an author as text or as a record', () => {
    const fields = {
      homepage: 'https://other.example',
      author: { name: 'B. Shop', email: 'b@other.example' },
    };
    expect(publisherOf(fields, GIVEN)).toEqual({
      homepage: 'https://jigs.example/',
      maintainer: 'A. Shop <a@jigs.example>',
      missing: [],
    });
    expect(publisherOf(fields, { OVERHANG_HOMEPAGE: '' })).toEqual({
      homepage: 'https://other.example',
      maintainer: 'B. Shop <b@other.example>',
      missing: [],
    });
    expect(publisherOf({ ...fields, author: 'C. Shop <c@other.example>' }, {}).maintainer).toBe(
      'C. Shop <c@other.example>',
    );
  });

  test('refuses a deb without a publisher, says what to set, and lets all else be built', () => {
    const nobody = publisherOf({}, {});
    expect(nobody.missing).toHaveLength(2);
    expect(() => refusePlaceholders(nobody, DEB)).toThrow(
      /A deb names its publisher\. Set OVERHANG_HOMEPAGE .*; and OVERHANG_MAINTAINER .*Name <mail@address>/,
    );
    for (const name of ['AppImage', 'nsis', 'dmg', 'dir']) refusePlaceholders(nobody, [{ name }]);
    refusePlaceholders(publisherOf({}, GIVEN), DEB);
  });

  test.each([
    ['OVERHANG_HOMEPAGE', 'jigs.example'],
    ['OVERHANG_HOMEPAGE', 'https://overhang.invalid/'],
    ['OVERHANG_MAINTAINER', 'A. Shop'],
    ['OVERHANG_MAINTAINER', 'a@jigs.example'],
    ['OVERHANG_MAINTAINER', 'A. Shop <a@shop.invalid>'],
  ])('does not count %s=%s as given', (name, value) => {
    const { missing } = publisherOf({}, { ...GIVEN, [name]: value });
    expect(missing.map((words) => words.split(' ')[0])).toEqual([name]);
  });

  test('electron-builder calls it before it packs anything, and asks for no field that is not there', async () => {
    expect(configuration.beforePack).toBeTypeOf('function');
    expect(configuration.linux?.maintainer).toMatch(/^.+ <.+@.+>$/);
    expect(configuration.extraMetadata).toHaveProperty('homepage', expect.stringMatching(/^https?:/));
  });
});
