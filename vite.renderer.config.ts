import react from '@vitejs/plugin-react';
import { resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { defineConfig, type Plugin } from 'vite';
import { FIRST_DOCUMENTS } from './renderer/store/first-documents.ts';
import { releasePapers } from './electron/release/release-papers.ts';

const { papers, worker } = releasePapers();

/** What `renderer/begin.ts` is made of, with the bundler's own way to load files; it waits for nothing else. */
const BEGIN =
  /vite[\\/]preload-helper|renderer[\\/](?:begin|worker[\\/]spawn-worker|seat[\\/]picture-canvas)\.ts$/;

/** Names `renderer/begin.ts` in the page, before the program itself; it runs as soon as it is there. */
const beginFirst: Plugin = {
  name: 'begin-first',
  transformIndexHtml: {
    order: 'post',
    handler(_html, { bundle = {} }) {
      const begin = Object.values(bundle).find((file) => file.type === 'chunk' && file.name === 'begin');
      if (begin === undefined) throw new Error('the page has no begin.ts');
      const attrs = { type: 'module', async: true, crossorigin: true, src: `/${begin.fileName}` };
      return [{ tag: 'script', attrs, injectTo: 'head-prepend' }];
    },
  },
};

/** Reads the documents that an order begins with while the page is built, so that no page has to. */
const readFirstDocuments: Plugin = {
  name: 'read-first-documents',
  enforce: 'pre',
  load(id) {
    if (!id.endsWith('/renderer/store/first-documents.ts')) return null;
    const text = JSON.stringify(FIRST_DOCUMENTS);
    if (!isDeepStrictEqual(JSON.parse(text), FIRST_DOCUMENTS))
      throw new Error('the first documents cannot be written as JSON');
    return `export const FIRST_DOCUMENTS = JSON.parse(${JSON.stringify(text)});`;
  },
};

/** The page: the same for the desktop and for the browser host. */
export default defineConfig({
  logLevel: 'warn',
  root: resolve(import.meta.dirname, 'renderer'),
  plugins: [readFirstDocuments, react(), beginFirst, papers],
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
      input: { index: 'renderer/index.html', begin: 'renderer/begin.ts' },
      output: {
        codeSplitting: {
          // Apart from the first screen, which does not wait for it; what both need stays with the first.
          includeDependenciesRecursively: false,
          groups: [
            {
              name: 'begin',
              test: BEGIN,
              priority: 1,
            },
            { name: 'three', test: /node_modules[\\/](three|@react-three)[\\/]/ },
            // One file compresses better than its pieces.
            { name: 'first', tags: ['$initial'] },
          ],
        },
      },
    },
  },
});
