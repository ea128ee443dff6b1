// `npm test`: lint, format, types and every test, then one line that says how it ended.
// Each of the first three counts as one. Nothing stops early, so one run shows all that is wrong.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureChromium } from './ensure-chromium.ts';
import { repository } from './source-files.ts';
import type { Tally } from './tally-reporter.ts';

const checks = [
  ['lint', 'oxlint', []],
  ['format', 'biome', ['check', '--error-on-warnings']],
  ['types', 'tsc', ['--noEmit']],
] as const;

function run(command: string, options: readonly string[], environment = {}): boolean {
  const program = join(repository, 'node_modules', '.bin', command);
  const { status } = spawnSync(program, options, {
    cwd: repository,
    stdio: 'inherit',
    env: { ...process.env, ...environment },
  });
  return status === 0;
}

function runCheck(name: string, command: string, options: readonly string[]): Tally {
  const isGood = run(command, options);
  console.log(`${name}: ${isGood ? 'passed' : 'failed'}`);
  return { passed: isGood ? 1 : 0, failed: isGood ? 0 : 1 };
}

function runVitest(filters: readonly string[]): Tally {
  const folder = mkdtempSync(join(tmpdir(), 'dropcurve-tally-'));
  const file = join(folder, 'tally.json');
  const isGood = run('vitest', ['run', ...filters], { TALLY_FILE: file });
  try {
    const tally = JSON.parse(readFileSync(file, 'utf8')) as Tally;
    return isGood || tally.failed > 0 ? tally : { ...tally, failed: 1 };
  } catch {
    return { passed: 0, failed: 1 }; // it ended before it could count
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const tallies = ensureChromium()
  ? [
      ...checks.map(([name, command, options]) => runCheck(name, command, options)),
      runVitest(process.argv.slice(2)),
    ]
  : [{ passed: 0, failed: 1 }];
const passed = tallies.reduce((sum, tally) => sum + tally.passed, 0);
const failed = tallies.reduce((sum, tally) => sum + tally.failed, 0);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
