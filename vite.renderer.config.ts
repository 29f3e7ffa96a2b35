import react from '@vitejs/plugin-react';
import { resolve } from 'node:path';
import { defineConfig } from 'vite';
import { beginFirst } from './renderer/build/begin-first.ts';
import { BEGIN, SEAT } from './renderer/build/files-of-modules.ts';
import { writeFirstScreen } from './renderer/build/first-screen.ts';
import { readConstants } from './renderer/build/read-constants.ts';
import { releasePapers } from './electron/release/release-papers.ts';

const { papers, worker } = releasePapers();

/** The page: the same for the desktop and for the browser host. */
export default defineConfig({
  logLevel: 'warn',
  root: resolve(import.meta.dirname, 'renderer'),
  plugins: [readConstants(), writeFirstScreen(), react(), beginFirst, papers],
  worker: { format: 'es', plugins: () => [readConstants(), worker] },
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
      // The program is loaded by `begin.ts`, and is the first screen: an entry too, so that it is kept in one file.
      input: { index: 'renderer/index.html', main: 'renderer/main.tsx' },
      output: {
        codeSplitting: {
          // Apart from the first screen, which does not wait for it; what both need stays with the first.
          includeDependenciesRecursively: false,
          groups: [
            {
              name: 'begin',
              test: BEGIN,
              priority: 2,
            },
            { name: 'three', test: /node_modules[\\/](three|@react-three)[\\/]/ },
            // One file compresses better than its pieces.
            { name: 'first', tags: ['$initial'], priority: 1 },
            { name: 'seat', test: SEAT },
          ],
        },
      },
    },
  },
});
