import react from '@vitejs/plugin-react';
import { resolve } from 'node:path';
import { defineConfig } from 'vite';
import { releasePapers } from './electron/release/release-papers.ts';

const { papers, worker } = releasePapers();

/** The page: the same for the desktop and for the browser host. */
export default defineConfig({
  logLevel: 'warn',
  root: resolve(import.meta.dirname, 'renderer'),
  plugins: [react(), papers],
  worker: { format: 'es', plugins: () => [worker] },
  build: {
    target: 'chrome140',
    outDir: resolve(import.meta.dirname, 'dist/renderer'),
    emptyOutDir: true,
    // Nothing inlined: the content security policy names files.
    assetsInlineLimit: 0,
    // The browsers that are aimed at preload modules by themselves.
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      output: {
        codeSplitting: {
          // Apart from the first screen, which does not wait for it; what both need stays with the first.
          includeDependenciesRecursively: false,
          groups: [
            { name: 'three', test: /node_modules[\\/](three|@react-three)[\\/]/ },
            // One file compresses better than its pieces.
            { name: 'first', tags: ['$initial'] },
          ],
        },
      },
    },
  },
});
