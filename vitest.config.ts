import { configDefaults, defineConfig } from 'vitest/config';

/** Rooms whose tests hold state of modules, of the process or of other programs: each file has its own of them. */
const APART = ['cli', 'desktop', 'guide', 'host', 'journey', 'main', 'release', 'renderer-store'].map(
  (room) => `tests/${room}/**/*.test.ts`,
);

export default defineConfig({
  test: {
    benchmark: { include: ['tests/**/*.bench.ts'] },
    // Machines differ and are shared: a test that hangs is stopped, one that is slow is not.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    expect: { poll: { timeout: 120_000 } },
    // Two cores are kept busy: while one file waits for another program, the next one runs.
    maxWorkers: 2,
    reporters: ['default', './tests/reporters/closing-line.ts'],
    projects: [
      { extends: true, test: { name: 'apart', include: APART } },
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: [...configDefaults.exclude, ...APART],
          // Loading the modules takes longer than most files' tests: files share them.
          isolate: false,
        },
      },
    ],
  },
});
