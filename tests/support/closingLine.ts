/**
 * Vitest reporter: after everything vitest itself prints, one plain line with the counts. A file that could not be run
 * counts as a failure.
 */
import type { Reporter, TestModule, TestRunEndReason } from 'vitest/node';

export default class ClosingLine implements Reporter {
  onTestRunEnd(
    modules: readonly TestModule[],
    unhandled: readonly unknown[],
    reason: TestRunEndReason,
  ): void {
    let passed = 0;
    let failed = unhandled.length;
    for (const module of modules) {
      failed += module.errors().length;
      for (const suite of module.children.allSuites()) failed += suite.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed++;
        if (state === 'failed') failed++;
      }
    }
    if (reason === 'failed' && failed === 0) failed = 1;
    process.once('exit', () => console.log(`${passed} passed, ${failed} failed`));
  }
}
