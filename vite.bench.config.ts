import { defineConfig } from 'vite';

/** The benchmarks, bundled for Node like the command line, so that they time what people run. */
export default defineConfig({
  logLevel: 'error',
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/bench',
    emptyOutDir: true,
    rolldownOptions: { input: { main: 'tests/bench/main.ts' } },
  },
});
