import { defineConfig } from 'vite';

/** The browser host, bundled for Node with all that it needs. */
export default defineConfig({
  logLevel: 'error',
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/host',
    emptyOutDir: true,
    rolldownOptions: { input: { main: 'electron/host/main.ts' } },
  },
});
