// The program itself, as a terminal runs it.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../../..');
const solve = (...words: string[]) =>
  spawnSync(join(root, 'node_modules/.bin/tsx'), ['src/cli/solve.ts', ...words], {
    cwd: root,
    encoding: 'utf8',
  });

describe('the solve program', () => {
  it('prints one JSON object and ends with 0', { timeout: 30_000 }, () => {
    const { status, stdout, stderr } = solve('src/shop/heron-lane.json', '--json');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toMatchObject({ states: { length: 15 } });
  });

  it('ends with 2 and complains on the other stream', { timeout: 30_000 }, () => {
    const { status, stdout, stderr } = solve('package.json');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toBe('format: is missing; it must be "dropcurve-shop"\n');
  });
});
