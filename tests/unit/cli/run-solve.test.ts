import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runSolve } from '../../../src/cli/run-solve.ts';
import type { StateReport } from '../../../src/shop/state-report.ts';
import { smallShop } from '../shop/small-shop.ts';

let folder: string;
let small: string;
const heron = join(import.meta.dirname, '../../../src/shop/heron-lane.json');

function fileWith(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'dropcurve-'));
  small = fileWith('small.json', JSON.stringify(smallShop));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly air: Readonly<Record<string, number>>;
  readonly states: readonly StateReport[];
}

function answer(...words: string[]): Answer {
  const { status, out, errors } = runSolve([...words, '--json']);
  expect({ status, errors }).toEqual({ status: 0, errors: '' });
  return JSON.parse(out) as Answer;
}

describe('solve --json', () => {
  it('does each drop alone and then every gate set', () => {
    const { air, states } = answer(small);
    expect(air).toEqual({ density: 1.2, viscosity: 1.81e-5, pressure: 101_325 });
    expect(states.map(({ open }) => open)).toEqual([['planer'], ['saw'], ['planer', 'saw']]);
  });

  it('gives every key that is promised, in full precision', () => {
    const { states } = answer(small, '--open', 'saw');
    expect(states).toHaveLength(1);
    const [state] = states;
    expect(Object.keys(state ?? {}).toSorted()).toEqual([
      'crossings',
      'difficulties',
      'drops',
      'open',
      'operatingPoint',
      'outcome',
      'residual',
      'sections',
    ]);
    expect(Object.keys(state?.operatingPoint ?? {})).toEqual([
      'flow',
      'suction',
      'produced',
      'stable',
      'withinPoints',
    ]);
    expect(Object.keys(state?.drops[0] ?? {})).toEqual([
      'id',
      'name',
      'travel',
      'flow',
      'velocity',
      'hoodStaticPressure',
      'need',
      'verdict',
      'slowest',
    ]);
    expect(Object.keys(state?.sections[0] ?? {})).toEqual([
      'id',
      'flow',
      'velocity',
      'loss',
      'joinLoss',
      'staticPressure',
      'totalPressure',
    ]);
    expect(String(state?.operatingPoint?.flow).length).toBeGreaterThan(14);
  });

  it('shuts all gates for an empty list', () => {
    const [state] = answer(small, '--open', '').states;
    expect(state).toMatchObject({ open: [], outcome: 'nothing open' });
  });

  it('opens several drops, with or without spaces after the comma', () => {
    const together = answer(small, '--open', 'planer,saw');
    expect(answer(small, '--open=planer, saw')).toEqual(together);
    expect(together.states[0]?.open).toEqual(['planer', 'saw']);
  });
});

describe('solve in text', () => {
  const lines = (...words: string[]) => {
    const { status, out, errors } = runSolve(words);
    expect({ status, errors }).toEqual({ status: 0, errors: '' });
    return out.split('\n');
  };

  it('has a row for each drop alone, a sentence for each state and the cautions once', () => {
    const text = lines(heron);
    const sentences = text.filter((line) => / open: .*\d.*\.$/.test(line));
    expect(sentences).toHaveLength(12 + 3);
    expect(text.filter((line) => /^Table saw +\d/.test(line))).toHaveLength(4);
    expect(text.filter((line) => line.startsWith('Cautions:'))).toHaveLength(1);
    expect(text.at(-2)).toMatch(/^Cautions:/);
    expect(text.find((line) => line.startsWith('Drum sander '))).toMatch(/tight: 6,\d\d\d ft\/min/);
  });

  it('speaks metric when asked', () => {
    const text = lines(heron, '--open', 'lathe', '--metric').join('\n');
    expect(text).toContain('m³/h');
    expect(text).not.toContain('cfm');
    expect(text).not.toMatch(/[\u2009\u202f]/);
  });

  it('lines its columns up', () => {
    const text = lines(small, '--open', 'saw');
    const head = text.find((line) => line.startsWith('Drop'));
    const row = text.find((line) => line.startsWith('Band saw'));
    expect(row?.indexOf('settles')).toBe(head?.indexOf('Verdict'));
  });
});

describe('solve on a fault', () => {
  it('ends with 2 and one line for each problem of the file', () => {
    const drops = smallShop.drops.map((drop) => ({ ...drop, need: -1 }));
    const bad = fileWith('bad.json', JSON.stringify({ ...smallShop, drops }));
    const { status, out, errors } = runSolve([bad]);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(errors.split('\n')).toEqual([
      'drops[0].need (drop "planer"): is -1; it must be a number from 0 to 100 [m³/s]',
      'drops[1].need (drop "saw"): is -1; it must be a number from 0 to 100 [m³/s]',
      '',
    ]);
  });

  it.each([
    ['no file at all', [], 'usage:'],
    ['two files', ['a.json', 'b.json'], 'usage:'],
    ['an unknown option', ['a.json', '--loud'], '--loud'],
    ['an option without its value', ['a.json', '--open'], '--open'],
    ['a missing file', ['/nowhere/shop.json'], 'no such file'],
    ['a folder', ['/'], 'folder'],
  ])('ends with 2 for %s', (_, words, says) => {
    const { status, out, errors } = runSolve(words);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(errors).toContain(says);
    expect(errors.trimEnd()).not.toMatch(/\n|\bat .*:\d+/);
  });

  it('ends with 2 for a drop that is not there, and guesses which was meant', () => {
    const { status, errors } = runSolve([small, '--open', 'planner']);
    expect(status).toBe(2);
    expect(errors).toBe('--open: no drop has the id "planner"; did you mean "planer"?\n');
  });

  it('does not read a file that is far too large', () => {
    const large = fileWith('large.json', 'nonsense'.repeat(6_250_000));
    const { status, errors } = runSolve([large]);
    expect(status).toBe(2);
    expect(errors).toMatch(/^the file: is 50000000 bytes long/);
  });
});
