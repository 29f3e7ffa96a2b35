import { defineConfig } from 'vite';
import { releasePapers } from './electron/release/release-papers.ts';

/** The preload: one CommonJS file, since a sandboxed preload can be nothing else. */
export default defineConfig({
  logLevel: 'error',
  plugins: [releasePapers().papers],
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: true,
    target: 'chrome140',
    minify: true,
    outDir: 'dist/preload',
    emptyOutDir: true,
    rolldownOptions: {
      input: { preload: 'electron/preload/preload.ts' },
      external: ['electron'],
      output: { format: 'cjs', entryFileNames: '[name].cjs' },
    },
  },
});
