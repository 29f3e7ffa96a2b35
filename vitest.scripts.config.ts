import { defineConfig } from 'vitest/config';

/** Scripts that drive the program and report or make pictures; they are no tests and run by name only. */
export default defineConfig({
  test: { include: ['tests/**/*.script.ts'], testTimeout: 600_000, hookTimeout: 300_000 },
});
