import { join, resolve } from 'node:path';
import { build } from 'vite';

/** Builds the command line as it is delivered, into a folder of its own, and gives the path of its `main.js`. */
export async function bundleCli(folder: string): Promise<string> {
  const outDir = join(folder, 'cli');
  await build({ configFile: resolve('vite.cli.config.ts'), logLevel: 'silent', build: { outDir } });
  return join(outDir, 'main.js');
}
