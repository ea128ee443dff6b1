import { expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { buildNetwork } from '../../../src/solve/network.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import { randomTree, seededRandom } from '../../setup/random-tree.ts';

it('a workspace is empty, with a place a section in every column, shared with no other', () => {
  const { sections } = randomTree(seededRandom(1), { leaves: 5, wyes: 'momentum' });
  const air = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
  const work = createWorkspace(buildNetwork(sections, air, colebrook));
  const columns = Object.values(work) as Float64Array[];
  for (const column of columns) {
    if (column !== work.supply) expect(column).toHaveLength(sections.length);
    expect(column.every((value) => value === 0)).toBe(true);
  }
  expect(new Set(columns.map(({ buffer }) => buffer)).size).toBe(columns.length);
});
