// The tables against full balances of the same states, one by one.

import { describe, expect, it } from 'vitest';
import { gateCoefficient } from '../../../src/duct/blast-gate.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { buildNetwork, type Network, type SectionInput } from '../../../src/solve/network.ts';
import { settle } from '../../../src/solve/settle.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import { hasSharedHeads } from '../../../src/study/characteristic.ts';
import {
  type PatternTables,
  patternFlows,
  patternPoint,
  patternTables,
  takeUpPattern,
} from '../../../src/study/gate-patterns.ts';
import { headGridUpTo } from '../../../src/study/head-grid.ts';
import { seededRandom, shopCurve, shopTree } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101325 };
const GRID = headGridUpTo(3600);

function tablesOf(sections: readonly SectionInput[], earlier?: PatternTables): PatternTables {
  const network = buildNetwork(sections, AIR, colebrook);
  const ends = network.fixed.map((_, i) => (isEnd(network, i) ? 1 : 0));
  const gates = {
    shut: ends.map((end) => end * gateCoefficient(0)),
    open: ends.map((end) => end * gateCoefficient(1)),
  };
  return patternTables(network, gates, GRID, earlier);
}

function isEnd(network: Network, section: number): boolean {
  return network.firstInlet[section] === network.endInlet[section];
}

function gatesOf(tables: PatternTables, pattern: number): Float64Array {
  const gates = tables.gates.shut.slice();
  tables.ends.forEach((end, bit) => {
    if (pattern & (1 << bit)) gates[end] = tables.gates.open[end]!;
  });
  return gates;
}

describe.each(['momentum', 'fixed'] as const)('gate patterns of shops with %s wyes', (wyes) => {
  it('give the flows of a full balance, in every pattern of 8 drops', () => {
    const random = seededRandom(8);
    let worst = 0;
    let worstTotal = 0;
    for (let shop = 0; shop < 4; shop++) {
      const tables = tablesOf(shopTree(random, 8, wyes).sections);
      const { network } = tables;
      const curve = shopCurve(random, 8);
      const work = createWorkspace(network);
      const flows = new Float64Array(network.count);
      for (let pattern = 1; pattern < 256; pattern++) {
        expect(settle(network, work, gatesOf(tables, pattern), curve)).toBeGreaterThan(0);
        takeUpPattern(tables, pattern);
        const head = patternPoint(tables, curve, 20);
        patternFlows(tables, head, flows);
        worstTotal = Math.max(worstTotal, Math.abs(flows[0]! / work.flow[0]! - 1));
        work.flow.forEach((flow, i) => {
          if (flow > 0.02 * work.flow[0]!) worst = Math.max(worst, Math.abs(flows[i]! / flow - 1));
        });
      }
    }
    // A cubic over a grid of 48 heads; a verdict turns on a part in a thousand at the most.
    expect(worst).toBeLessThan(1e-4);
    expect(worst).toBeGreaterThan(0);
    expect(worstTotal).toBeLessThan(1e-6);
  });
});

describe('branches that no choice touches', () => {
  const random = seededRandom(3);
  const { sections } = shopTree(random, 8, 'momentum');
  const trunk = sections.findIndex((section) => section.into === -1);
  const wider = sections.map((section, i) =>
    i === trunk ? { ...section, diameter: section.diameter * 1.2 } : section,
  );

  it('are taken over when the trunk alone changes, and give the same answers', () => {
    const curve = shopCurve(random, 8);
    const before = tablesOf(sections);
    for (let pattern = 0; pattern < 256; pattern++) takeUpPattern(before, pattern);
    const after = tablesOf(wider, before);
    const fresh = tablesOf(wider);
    const shared = after.known.filter((branches, i) => i > 0 && branches === before.known[i]);
    expect(shared.length).toBeGreaterThan(0);
    for (const tables of [after, fresh]) takeUpPattern(tables, 0b10110);
    expect(patternPoint(after, curve, 20)).toBe(patternPoint(fresh, curve, 20));
  });

  it('are made anew when a drop changes', () => {
    const before = tablesOf(sections);
    takeUpPattern(before, 1);
    const end = before.network.order[before.ends[0]!]!;
    const longer = sections.map((section, i) =>
      i === end ? { ...section, frictional: section.frictional * 2 } : section,
    );
    const after = tablesOf(longer, before);
    expect(after.known[before.ends[0]!]).not.toBe(before.known[before.ends[0]!]);
    expect(after.known[before.ends[1]!]).toBe(before.known[before.ends[1]!]);
  });
});

describe('what the tables refuse', () => {
  it('a wye whose inlets share no head', () => {
    const fixed = (coefficient: number) =>
      ({ kind: 'fixed', coefficient, of: 'combined' }) as const;
    const pipe = { diameter: 0.1, roughness: 9e-5, frictional: 20, fixed: 1 };
    const sections = [
      { ...pipe, into: -1, join: fixed(0) },
      { ...pipe, into: 0, join: fixed(0.1) },
      { ...pipe, into: 0, join: fixed(0.4) },
    ];
    expect(hasSharedHeads(buildNetwork(sections, AIR, colebrook))).toBe(false);
    expect(() => tablesOf(sections)).toThrow('share no head');
  });

  it('more open ends than a pattern has bits', () => {
    const { sections } = shopTree(seededRandom(1), 31, 'fixed');
    expect(() => tablesOf(sections)).toThrow('31 open ends, 30 at most');
  });

  it('a collector that meets the ducts above the grid', () => {
    const tables = tablesOf(shopTree(seededRandom(2), 3, 'fixed').sections);
    const strong = { ...shopCurve(seededRandom(2), 3), pressureScale: 100, flowScale: 100 };
    takeUpPattern(tables, 1);
    expect(patternPoint(tables, strong, 20)).toBeNaN();
  });
});
