import { copyFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { defineConfig, type Plugin } from 'vite';
import { releasePapers } from './electron/release/release-papers.ts';

/** The wasm of the solver and of the geometry library beside the bundle, where `electron/cli/load-*.ts` look for it. */
const copyWasm: Plugin = {
  name: 'copy-wasm',
  writeBundle({ dir = '' }) {
    for (const path of ['highs/build/highs.wasm', 'manifold-3d/manifold.wasm']) {
      copyFileSync(resolve(import.meta.dirname, 'node_modules', path), `${dir}/${basename(path)}`);
    }
  },
};

/** The command line, bundled for Node with all that it needs. */
export default defineConfig({
  logLevel: 'error',
  plugins: [copyWasm, releasePapers().papers],
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/cli',
    emptyOutDir: true,
    rolldownOptions: {
      input: {
        main: 'electron/cli/main.ts',
        worker: 'electron/cli/worker.ts',
        'part-worker': 'electron/cli/part-worker.ts',
        demo: 'electron/cli/demo.ts',
      },
    },
  },
});
