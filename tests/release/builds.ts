import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { z } from 'zod';

export const BUILDS = ['renderer', 'main', 'preload', 'host', 'cli'] as const;
export type BuildName = (typeof BUILDS)[number];

/** Makes a build as it is delivered, with source maps beside, in a folder of its own. */
export async function makeBuild(name: BuildName, folder: string): Promise<string> {
  const outDir = join(folder, 'dist', name);
  await build({
    configFile: `vite.${name}.config.ts`,
    logLevel: 'silent',
    build: { outDir, emptyOutDir: true, sourcemap: true },
  });
  return outDir;
}

const MAP = z.object({ sources: z.array(z.string().nullable()) });

/** The packages that the source maps of a build name, by folder: the bundler's account apart from our own. */
export function packagesInMaps(outDir: string): ReadonlySet<string> {
  const sources = filesOf(outDir)
    .filter((file) => file.endsWith('.map'))
    .flatMap((file) => MAP.parse(JSON.parse(readFileSync(file, 'utf8'))).sources);
  return new Set(
    sources.flatMap((source) => {
      const parts = (source ?? '').split('/');
      const last = parts.lastIndexOf('node_modules');
      if (last < 0) return [];
      const first = parts.indexOf('node_modules');
      const end = last + (parts[last + 1]?.startsWith('@') === true ? 3 : 2);
      return [parts.slice(first, end).join('/')];
    }),
  );
}

/** All files of a folder and of those in it. */
export const filesOf = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));

export const BILL = z.object({
  bomFormat: z.string(),
  specVersion: z.string(),
  serialNumber: z.string(),
  version: z.int(),
  metadata: z.object({
    timestamp: z.string().optional(),
    component: z.object({ 'bom-ref': z.string(), type: z.string(), name: z.string(), version: z.string() }),
  }),
  components: z.array(
    z.object({
      type: z.string(),
      'bom-ref': z.string(),
      name: z.string(),
      version: z.string(),
      purl: z.string(),
      hashes: z.array(z.object({ alg: z.string(), content: z.string() })),
      licenses: z.array(z.unknown()),
      properties: z.array(z.object({ name: z.string(), value: z.string() })),
      components: z
        .array(z.looseObject({ type: z.string(), 'bom-ref': z.string(), name: z.string() }))
        .optional(),
    }),
  ),
  dependencies: z.array(z.object({ ref: z.string(), dependsOn: z.array(z.string()).optional() })),
});

export type Bill = z.infer<typeof BILL>;

export const readBill = (outDir: string): Bill =>
  BILL.parse(JSON.parse(readFileSync(join(outDir, 'sbom.cdx.json'), 'utf8')));

/** The folders of the packages that a bill tells of. */
export const pathsOf = ({ components }: Bill): readonly string[] =>
  components.flatMap(({ properties }) => properties.map(({ value }) => value));
