import { defineConfig } from 'vite';
import { releasePapers } from './electron/release/release-papers.ts';

/** Electron's main process, bundled with all that it needs but Electron itself. */
export default defineConfig({
  logLevel: 'error',
  plugins: [releasePapers().papers],
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: true,
    target: 'node22',
    outDir: 'dist/main',
    emptyOutDir: true,
    rolldownOptions: { input: { main: 'electron/main/main.ts' }, external: ['electron'] },
  },
});
