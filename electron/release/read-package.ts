import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { HELD } from './held.ts';
import { withoutText } from './licence-texts.ts';
import type { BundledPackage } from './types.ts';

const MANIFEST = z.object({
  name: z.string(),
  version: z.string(),
  license: z.string().optional(),
  author: z.union([z.string(), z.object({ name: z.string() }).transform(({ name }) => name)]).optional(),
});

const LOCK = z.object({ packages: z.record(z.string(), z.object({ integrity: z.string().optional() })) });

/**
 * Reads what a release says of packages, by their paths from the root (`node_modules/zod`), in their names' order.
 * Throws where one is not in the lock file, or where neither package.json nor a file tells its licence.
 */
export function readPackages(root: string, paths: Iterable<string>): readonly BundledPackage[] {
  const { packages } = LOCK.parse(JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')));
  return [...new Set(paths)]
    .map((path) => {
      const integrity = packages[path]?.integrity;
      if (integrity === undefined) {
        throw new Error(`${path} is in a build, and package-lock.json has no hash of it: npm ci`);
      }
      return readPackage(root, path, integrity);
    })
    .sort((a, b) => order(a.name, b.name) || order(a.version, b.version));
}

function readPackage(root: string, path: string, integrity: string): BundledPackage {
  const folder = join(root, path);
  const manifest = MANIFEST.parse(JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')));
  const files = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
    .sort(order);
  const texts = files.map((file) => noticeOf(join(folder, file)));
  const licence = manifest.license ?? (texts.some(isMit) ? 'MIT' : undefined);
  if (licence === undefined) {
    throw new Error(`${path} tells no licence: neither "license" in its package.json nor a file.`);
  }
  return {
    path,
    name: manifest.name,
    version: manifest.version,
    licence,
    integrity,
    notices: texts.length > 0 ? texts : [withoutText(licence, path, manifest.author)],
    holds: HELD[manifest.name] ?? [],
  };
}

/** A notice, without the list that Vite's own has of what its build tool is made of, none of which it adds to a page. */
const noticeOf = (file: string): string =>
  (
    readFileSync(file, 'utf8')
      .replaceAll('\r\n', '\n')
      .split(/^# Licenses of bundled dependencies$/m)[0] ?? ''
  ).trim();

/** By code points, so that every machine orders alike. */
const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const isMit = (text: string): boolean =>
  /^(The )?MIT License/.test(text) && text.includes('Permission is hereby granted, free of charge');
