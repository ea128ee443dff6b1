// A Vitest reporter that leaves the number of tests passed and failed in a file, for run-tests.ts.
import { writeFileSync } from 'node:fs';
import type { Reporter, SerializedError, TestModule } from 'vitest/node';

export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

export function count(modules: readonly TestModule[], errors: readonly SerializedError[]): Tally {
  let passed = 0;
  let failed = errors.length;
  for (const module of modules) {
    const states = [...module.children.allTests()].map((test) => test.result().state);
    const broken = states.filter((state) => state === 'failed').length;
    passed += states.filter((state) => state === 'passed').length;
    // A file that does not load, or fails outside its tests, is a failure of its own.
    failed += broken === 0 && module.state() === 'failed' ? 1 : broken;
  }
  return { passed, failed };
}

export const tallyReporter: Reporter = {
  onTestRunEnd(modules, errors) {
    const file = process.env['TALLY_FILE'];
    if (file !== undefined) writeFileSync(file, JSON.stringify(count(modules, errors)));
  },
};
