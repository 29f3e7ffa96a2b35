import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build } from 'vite';

/**
 * Builds a page with the renderer's way to the platform, as the program's is built; returns its folder.
 *
 * @param script of the page, given what names a file of `renderer/transport` in an import
 */
export async function buildTransportPage(
  folder: string,
  script: (transport: (file: string) => string) => string,
): Promise<string> {
  const source = join(folder, 'source');
  mkdirSync(source);
  writeFileSync(
    join(source, 'index.html'),
    '<!doctype html><title>T</title><link rel="icon" href="data:,"><script type="module" src="./main.js"></script>',
  );
  writeFileSync(
    join(source, 'main.js'),
    script((file) => JSON.stringify(resolve('renderer/transport', file))),
  );
  const built = join(folder, 'renderer');
  await build({
    configFile: false,
    root: source,
    logLevel: 'silent',
    build: { outDir: built, emptyOutDir: true },
  });
  return built;
}
