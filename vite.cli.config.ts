import { copyFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { defineConfig, type Plugin } from 'vite';

/** The solver's wasm beside the bundle, where `electron/cli/load-solver.ts` looks for it. */
const copySolver: Plugin = {
  name: 'copy-solver',
  writeBundle({ dir = '' }) {
    copyFileSync(resolve(import.meta.dirname, 'node_modules/highs/build/highs.wasm'), `${dir}/highs.wasm`);
  },
};

/** The command line, bundled for Node with all that it needs. */
export default defineConfig({
  logLevel: 'error',
  plugins: [copySolver],
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/cli',
    emptyOutDir: true,
    rolldownOptions: {
      input: { main: 'electron/cli/main.ts', worker: 'electron/cli/worker.ts', demo: 'electron/cli/demo.ts' },
    },
  },
});
