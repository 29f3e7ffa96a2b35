import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { unzipSync } from 'fflate';
import { z } from 'zod';

const manifestSchema = z.object({ files: z.array(z.object({ path: z.string(), sha256: z.string() })) });

/** What a folder or zip of cut files lacks or has too much, by its own manifest; nothing when it is whole. */
export function faultsOf(place: string): readonly string[] {
  const files = place.endsWith('.zip') ? ofZip(place) : ofFolder(place);
  const manifest = files.get('manifest.json');
  if (manifest === undefined) return ['no manifest'];
  const listed = manifestSchema.parse(JSON.parse(Buffer.from(manifest).toString('utf8'))).files;
  const known = new Set(['manifest.json', ...listed.map(({ path }) => path)]);
  return [
    ...listed.flatMap(({ path, sha256 }) => {
      const bytes = files.get(path);
      if (bytes === undefined) return [`${path} is missing`];
      return createHash('sha256').update(bytes).digest('hex') === sha256 ? [] : [`${path} has other bytes`];
    }),
    ...[...files.keys()].filter((path) => !known.has(path)).map((path) => `${path} is not listed`),
  ];
}

function ofFolder(place: string): Map<string, Uint8Array> {
  const names = readdirSync(place, { recursive: true }).map(String);
  const paths = names.filter((name) => statSync(join(place, name)).isFile());
  return new Map(paths.map((name) => [name.split(sep).join('/'), readFileSync(join(place, name))]));
}

function ofZip(place: string): Map<string, Uint8Array> {
  const entries = Object.entries(unzipSync(readFileSync(place)));
  return new Map(entries.map(([name, bytes]) => [name.slice(name.indexOf('/') + 1), bytes]));
}
