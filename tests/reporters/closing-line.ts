import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line that any tool can read: `N passed, N failed, N skipped`. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== 'pending') count[state] += 1;
      }
      // A file that does not even load holds no tests, and is a failure all the same.
      if (module.state() === 'failed' && [...module.children.allTests()].length === 0) count.failed += 1;
    }
    process.stdout.write(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
