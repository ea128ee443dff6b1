// The sheet's states say what the command line says of the same file.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runSolve } from '../../../src/cli/run-solve.ts';
import { sheetStates, stateTable } from '../../../src/state/sheet-view.ts';
import { demoShop } from './demo-shop.ts';

const plain = (words: string) => words.replace(/[\u2009\u202f]/g, ' ');

function printed(units: 'us' | 'metric'): string {
  const folder = mkdtempSync(join(tmpdir(), 'dropcurve-'));
  try {
    const file = join(folder, 'demo.json');
    writeFileSync(file, JSON.stringify(demoShop()));
    return runSolve(units === 'metric' ? [file, '--metric'] : [file]).out.replace(/ +/g, ' ');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe.each(['us', 'metric'] as const)('the states of the demo on its sheet, %s', (units) => {
  const states = sheetStates(demoShop(), units);
  const said = printed(units);

  it('has a row for each drop, with the figures of the command line', () => {
    expect(states.alone).toHaveLength(12);
    for (const [name, flow, need, speed, slowest] of states.alone) {
      expect(said).toContain(plain(`${name} ${flow} ${need} ${speed} ${slowest} `));
    }
  });

  it('says where the air is slowest, and the verdict', () => {
    const verdicts = Object.fromEntries(states.alone.map(([name, ...cells]) => [name, cells]));
    expect(verdicts['Blade guard']?.[4]).toBe('the main by the table saw');
    expect(verdicts['Blade guard']?.[5]).toMatch(/^settles: .* in the main by the table saw$/);
    expect(verdicts['Table saw']?.slice(4)).toEqual(['its own pipe', 'carries']);
    expect(verdicts['Drum sander']?.[5]).toMatch(/^tight: /);
  });

  it('has the open drops of each set, with its sentence', () => {
    expect(states.sets.map(({ name, rows }) => [name, ...rows.map(([drop]) => drop)])).toEqual([
      ['Table saw and guard', 'Table saw', 'Blade guard'],
      ['Band saw, both hoods', 'Band saw lower', 'Band saw upper'],
      ['Planing, with the floor sweep', 'Thickness planer', 'Floor sweep'],
    ]);
    for (const { sentence } of states.sets) expect(said).toContain(plain(sentence));
  });

  it('makes one table of all of them, each row with its state and a cell for each column', () => {
    const { columns, rows } = stateTable(states);
    expect(rows.map(([state, drop]) => [state, drop]).slice(11, 14)).toEqual([
      ['alone', 'Drum sander'],
      ['Table saw and guard', 'Table saw'],
      ['Table saw and guard', 'Blade guard'],
    ]);
    expect(rows).toHaveLength(12 + 6);
    expect(columns[2]).toEqual({ name: 'Flow', unit: units === 'us' ? 'cfm' : 'm³/h' });
    for (const cells of rows) expect(cells).toHaveLength(columns.length);
  });

  it('heads numbers with their units', () => {
    const flow = units === 'us' ? 'cfm' : 'm³/h';
    const speed = units === 'us' ? 'ft/min' : 'm/s';
    expect(states.columns.map(({ unit }) => unit)).toEqual(['', flow, flow, speed, speed, '', '']);
  });
});
