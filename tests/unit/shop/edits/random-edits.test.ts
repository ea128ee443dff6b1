// Whatever is edited after whatever, the document stays one that opens, and the old one stays as it
// was, and the solver balances what comes of it. Begins from the demo.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addBranch, branchOff, type NewBranch } from '../../../../src/shop/edits/branch-off.ts';
import type { ShopEdit } from '../../../../src/shop/edits/change.ts';
import {
  renameDrop,
  setGate,
  setGateTravel,
  setHood,
  setNeed,
  setPort,
} from '../../../../src/shop/edits/edit-drop.ts';
import { removeGateSet, saveGateSet } from '../../../../src/shop/edits/edit-gate-sets.ts';
import {
  renameSection,
  setCompression,
  setFittings,
  setJoin,
  setLength,
  setPipe,
  setTransition,
} from '../../../../src/shop/edits/edit-section.ts';
import {
  replaceCurve,
  setAir,
  setCarryingRange,
  setCollector,
} from '../../../../src/shop/edits/edit-shop.ts';
import { duplicateBranch } from '../../../../src/shop/edits/duplicate-branch.ts';
import { freshId } from '../../../../src/shop/edits/fresh-id.ts';
import {
  insertDownstream,
  insertUpstream,
  splitSection,
} from '../../../../src/shop/edits/insert-section.ts';
import { moveBranch, moveBranchOnto } from '../../../../src/shop/edits/move-branch.ts';
import { removeBranch, removeDrop, removeSection } from '../../../../src/shop/edits/remove-part.ts';
import {
  moveAmongBranches,
  moveDropInList,
  swapWithUpstream,
} from '../../../../src/shop/edits/reorder.ts';
import { tidyJoins } from '../../../../src/shop/edits/tidy-joins.ts';
import { openTravel } from '../../../../src/shop/gate-state.ts';
import { openShop } from '../../../../src/shop/open-shop.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../../src/shop/shop-model.ts';
import { stateReport } from '../../../../src/shop/state-report.ts';
import { smallShop } from '../small-shop.ts';

const file = join(import.meta.dirname, '../../../../src/shop/heron-lane.json');
const opened = openShop(readFileSync(file, 'utf8'));
if (opened.kind === 'refused') throw new Error('the demo does not open');
const heron = opened.shop;

/** What an edit may draw from: which part, which other thing, and a fraction. */
interface Draw {
  readonly part: number;
  readonly other: number;
  readonly fraction: number;
}

const sectionAt = (shop: Shop, at: number) => shop.sections[at % shop.sections.length]?.id ?? '';
const dropAt = (shop: Shop, at: number) => shop.drops[at % shop.drops.length]?.id ?? '';
const newId = (shop: Shop, wish = 'new part') =>
  freshId(
    wish,
    shop.sections.map(({ id }) => id),
  );

const pipe = { kind: 'custom', diameter: 0.14, roughness: 1e-4 } as const;
const newSection = (id: string, length: number) => ({ id, pipe, length, fittings: [] });
const branchFor = (shop: Shop, { other, fraction }: Draw): NewBranch => ({
  section: newSection(newId(shop, 'new branch'), 1 + fraction),
  drop: {
    id: freshId(
      'new drop',
      shop.drops.map(({ id }) => id),
    ),
    name: 'New drop',
    hood: { kind: 'table', id: 'plain-end' },
  },
  join:
    other % 2 === 0
      ? { kind: 'momentum', angle: 90 * fraction }
      : { kind: 'fixed', coefficient: fraction, of: 'own' },
});

const EDITS: Readonly<Record<string, (shop: Shop, draw: Draw) => ShopEdit>> = {
  renameDrop: (s, d) => renameDrop(dropAt(s, d.part), '名前'),
  setHood: (s, d) => setHood(dropAt(s, d.part), { kind: 'coefficient', coefficient: d.fraction }),
  setPort: (s, d) => setPort(dropAt(s, d.part), 0.1 + d.fraction / 10, { kind: 'sudden' }),
  noPort: (s, d) => setPort(dropAt(s, d.part), undefined, undefined),
  noGate: (s, d) => setGate(dropAt(s, d.part), undefined),
  setGate: (s, d) => setGate(dropAt(s, d.part), { travel: d.fraction, leak: 0.01 }),
  setGateTravel: (s, d) => setGateTravel(dropAt(s, d.part), d.fraction),
  setNeed: (s, d) => setNeed(dropAt(s, d.part), d.other % 2 ? d.fraction : undefined, 'lathe'),
  renameSection: (s, d) => renameSection(sectionAt(s, d.part), d.other % 2 ? 'pipe' : undefined),
  setLength: (s, d) => setLength(sectionAt(s, d.part), 0.1 + 20 * d.fraction),
  setPipe: (s, d) =>
    setPipe(
      sectionAt(s, d.part),
      d.other % 2 ? pipe : { kind: 'catalogue', family: 'hose-wire-helix', size: '4in' },
    ),
  setCompression: (s, d) => setCompression(sectionAt(s, d.part), d.fraction / 2),
  setFittings: (s, d) => setFittings(sectionAt(s, d.part), [{ kind: 'mitre', angle: 45 }]),
  setTransition: (s, d) => setTransition(sectionAt(s, d.part), { kind: 'taper', angle: 14 }),
  joinMomentum: (s, d) =>
    setJoin(sectionAt(s, d.part), { kind: 'momentum', angle: 90 * d.fraction }),
  joinFixed: (s, d) =>
    setJoin(sectionAt(s, d.part), { kind: 'fixed', coefficient: d.fraction, of: 'own' }),
  insertDownstream: (s, d) => insertDownstream(sectionAt(s, d.part), newSection(newId(s), 1)),
  insertUpstream: (s, d) => insertUpstream(sectionAt(s, d.part), newSection(newId(s), 1)),
  splitSection: (s, d) => splitSection(sectionAt(s, d.part), 3 * d.fraction, newId(s)),
  addBranch: (s, d) => addBranch(sectionAt(s, d.part), branchFor(s, d)),
  branchOff: (s, d) => branchOff(sectionAt(s, d.part), d.fraction, newId(s), branchFor(s, d)),
  removeSection: (s, d) => removeSection(sectionAt(s, d.part)),
  removeDrop: (s, d) => removeDrop(dropAt(s, d.part)),
  removeBranch: (s, d) => removeBranch(sectionAt(s, d.part)),
  // Doubling the whole shop again and again would only cost time.
  duplicateBranch: (s, d) =>
    s.sections.length > 40 ? (shop) => shop : duplicateBranch(sectionAt(s, d.part)),
  moveBranch: (s, d) => moveBranch(sectionAt(s, d.part), sectionAt(s, d.other)),
  moveBranchOnto: (s, d) =>
    moveBranchOnto(sectionAt(s, d.part), sectionAt(s, d.other), d.fraction, newId(s)),
  swapWithUpstream: (s, d) => swapWithUpstream(sectionAt(s, d.part)),
  moveAmongBranches: (s, d) => {
    // Few wyes have more than one branch: the first place from here on where there is an order.
    const edits = s.sections.map((_, i) => moveAmongBranches(sectionAt(s, d.part + i), 1));
    return edits.find((edit) => edit(s) !== s) ?? moveAmongBranches(sectionAt(s, 0), -1);
  },
  moveDropInList: (s, d) => moveDropInList(dropAt(s, d.part), d.other % 2 ? 1 : -1),
  saveGateSet: (s, d) =>
    saveGateSet({
      id: `set-${d.other % 3}`,
      name: 'Set',
      open: [dropAt(s, d.part), dropAt(s, d.other), dropAt(s, d.part)],
    }),
  removeGateSet: (s, d) => removeGateSet(s.gateSets[d.other % s.gateSets.length]?.id ?? 'none'),
  setAir: (_, d) =>
    setAir({ kind: 'room', altitude: 3000 * d.fraction, temperature: 5, humidity: 1 }),
  setCarryingRange: (_, d) => setCarryingRange({ low: 15 + d.fraction, high: 20 }),
  replaceCurve: () => replaceCurve(smallShop.collector.curve),
  setCollector: (_, d) =>
    setCollector({
      speedRatio: d.other % 2 ? 0.5 + d.fraction : undefined,
      filter: { kind: 'none' },
    }),
};

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) frozen(inner);
    Object.freeze(value);
  }
  return value;
}

const draws = fc.array(
  fc.record({
    name: fc.constantFrom(...Object.keys(EDITS)),
    part: fc.nat(200),
    other: fc.nat(200),
    fraction: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  { minLength: 1, maxLength: 25 },
);

describe('random edits', () => {
  it('keep the document in order and the old one as it was', () => {
    const made = new Map<string, number>();
    fc.assert(
      fc.property(draws, (steps) => {
        let shop = frozen(heron);
        for (const { name, ...draw } of steps) {
          const next = EDITS[name]?.(shop, draw)(shop) ?? shop;
          if (next !== shop) made.set(name, (made.get(name) ?? 0) + 1);
          shop = frozen(next);
        }
        expect(openShop(JSON.stringify(shop))).toEqual({ kind: 'opened', shop });
        expect(tidyJoins(shop)).toBe(shop);
        const report = stateReport(modelOf(shop), shop.drops.map(openTravel));
        expect(report.residual).toBeLessThan(1e-9);
      }),
      { numRuns: 400, seed: 5 },
    );
    // Each kind of edit was really made now and then.
    for (const name of Object.keys(EDITS)) expect(made.get(name) ?? 0, name).toBeGreaterThan(2);
  });
});
