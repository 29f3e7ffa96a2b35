import { defineConfig } from 'vite';

/** Electron's main process, bundled with all that it needs but Electron itself. */
export default defineConfig({
  logLevel: 'error',
  ssr: { noExternal: true, external: ['electron'] },
  build: {
    ssr: true,
    target: 'node22',
    outDir: 'dist/main',
    emptyOutDir: true,
    rolldownOptions: { input: { main: 'electron/main/main.ts' }, external: ['electron'] },
  },
});
