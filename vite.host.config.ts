import { defineConfig } from 'vite';
import { releasePapers } from './electron/release/release-papers.ts';

/** The browser host, bundled for Node with all that it needs. */
export default defineConfig({
  logLevel: 'error',
  plugins: [releasePapers().papers],
  ssr: { noExternal: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/host',
    emptyOutDir: true,
    rolldownOptions: { input: { main: 'electron/host/main.ts' } },
  },
});
