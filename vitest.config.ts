import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    benchmark: { include: ['tests/**/*.bench.ts'] },
    // Machines differ and are shared: a test that hangs is stopped, one that is slow is not.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    reporters: ['default', './tests/reporters/closing-line.ts'],
  },
});
