import { defineConfig } from 'vite';

/** The command line, bundled for Node with all that it needs. */
export default defineConfig({
  logLevel: 'error',
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/cli',
    emptyOutDir: true,
    rolldownOptions: { input: { main: 'electron/cli/main.ts', demo: 'electron/cli/demo.ts' } },
  },
});
