import { describe, expect, it } from 'vitest';
import { openShopDocument } from '../../../../src/shop/open-shop.ts';
import type { Drop } from '../../../../src/shop/schema/drop-schema.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import type { StateReport } from '../../../../src/shop/state-report.ts';
import { type AddedRun, addedSectionId, editOf } from '../../../../src/shop/decisions/choice.ts';
import { type Reach, reachStudy } from '../../../../src/shop/decisions/reach.ts';
import { reachCosts } from '../../../../src/shop/decisions/reach-costs.ts';
import { reachSizeStudy } from '../../../../src/shop/decisions/reach-sizes.ts';
import { dropIn } from '../../../../src/shop/decisions/solved-states.ts';
import { finish } from '../../../../src/study/progress.ts';
import { randomShop } from '../../../setup/random-shop.ts';
import { seededRandom } from '../../../setup/random-tree.ts';
import { smallShop } from '../small-shop.ts';
import { solvedByCommandLine } from './command-line.ts';
import { demoShop } from './demo.ts';

const demo = demoShop();

const steel = (size: string) => ({ kind: 'catalogue', family: 'galvanised-spiral', size }) as const;
const bend = { kind: 'bend', angle: 90, radius: 1.5 } as const;
const longer = (drop: string, size: string): AddedRun => ({
  target: { kind: 'existing', drop },
  pipe: steel(size),
  fittings: [bend],
});

/** One state of the shop with the run, by the command line. */
function solvedAt(shop: Shop, { run, open }: Pick<Reach, 'run' | 'open'>, length: number) {
  return solvedByCommandLine(editOf({ kind: 'run', run, length })(shop), open)[0]!;
}

function velocityIn(report: StateReport, section: string | undefined): number {
  return report.sections.find(({ id }) => id === section)!.velocity;
}

describe('how far a drop reaches', () => {
  it('ends where the command line says that something gives out, on random shops', () => {
    const kinds = new Set<string>();
    let limits = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const random = seededRandom(seed);
      const wyes = seed % 2 === 0 ? 'fixed' : 'momentum';
      const curve = seed % 3 === 0 ? 'humped' : 'falling';
      const shop = randomShop(random, { drops: 3, wyes, curve });
      const drop = shop.drops[seed % 3]!.id;
      const reach = finish(reachStudy(shop, longer(drop, '125mm'), { longest: 20 }));
      kinds.add(reach.end.kind === 'limit' ? reach.end.limit.kind : reach.end.kind);
      for (const limit of reach.limits) {
        if (limit.leaps) continue;
        limits += 1;
        const report = solvedAt(shop, reach, limit.length);
        if (limit.kind === 'need') {
          expect(dropIn(report, drop).flow / reach.need!).toBeCloseTo(1, 6);
        }
        const { low, high } = shop.carryingRange;
        if (limit.kind === 'settles') {
          expect(velocityIn(report, limit.section) / low).toBeCloseTo(1, 6);
        }
        if (limit.kind === 'tight') {
          expect(velocityIn(report, limit.section) / high).toBeCloseTo(1, 6);
        }
      }
      const lengths = reach.limits.map(({ length }) => length);
      expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
      if (reach.end.kind !== 'limit') continue;
      const verdictAt = (length: number) => dropIn(solvedAt(shop, reach, length), drop).verdict;
      expect(['carries', 'tight']).toContain(verdictAt(reach.length - 1e-3));
      expect(['settles', 'short']).toContain(verdictAt(reach.length + 1e-3));
    }
    expect([...kinds].toSorted()).toEqual(['from the start', 'need', 'not within', 'settles']);
    expect(limits).toBeGreaterThan(40);
  });

  it('is none where the drop fails as it stands, and says at what', () => {
    const { end, length } = finish(reachStudy(smallShop, longer('saw', '300mm')));
    expect(length).toBe(0);
    expect(end).toMatchObject({ kind: 'from the start', fault: 'settles' });
  });

  it('gives figures for a plot that are those of the command line', () => {
    const reach = finish(reachStudy(demo, longer('band-saw-lower', '5in'), { longest: 12 }));
    for (const { length, figures } of [reach.points[0]!, reach.points[40]!]) {
      const drop = dropIn(solvedAt(demo, reach, length), 'band-saw-lower');
      expect(figures!.flow).toBeCloseTo(drop.flow, 9);
      expect(figures!.slowest).toBeCloseTo(drop.slowest.velocity, 7);
      expect(figures!.section).toBe(drop.slowest.section);
    }
  });
});

describe('a run that is added', () => {
  it('of the very pipe that is there makes that section longer', () => {
    const own = smallShop.sections.find(({ id }) => id === 'saw-run')!;
    const run = { ...longer('saw', '100mm'), pipe: own.pipe };
    const shop = editOf({ kind: 'run', run, length: 3 })(smallShop);
    expect(shop.sections).toHaveLength(smallShop.sections.length);
    const now = shop.sections.find(({ id }) => id === 'saw-run')!;
    expect(now).toMatchObject({ length: 5, fittings: [bend] });
  });

  it('of another pipe is a section of its own, and the port stays as wide as it was', () => {
    const shop = editOf({ kind: 'run', run: longer('saw', '125mm'), length: 3 })(smallShop);
    const id = addedSectionId(smallShop, longer('saw', '125mm'));
    const saw = shop.drops.find((drop) => drop.id === 'saw')!;
    expect(saw).toMatchObject({ into: id, port: 0.1 });
    expect(shop.sections.find((section) => section.id === id)).toMatchObject({ into: 'saw-run' });
    expect(openShopDocument(shop).kind).toBe('opened');
  });

  it('may be a new drop, branched off in a section or at its end', () => {
    const drop: Omit<Drop, 'into'> = {
      id: 'lathe',
      name: 'Lathe',
      hood: { kind: 'table', id: 'plain-end' },
      gate: { travel: 1 },
      need: 0.12,
    };
    const target = {
      kind: 'new',
      section: 'saw-run',
      upstreamLength: 1,
      drop,
      join: { kind: 'momentum', angle: 45 },
    } as const;
    const run: AddedRun = { target, pipe: steel('100mm'), fittings: [] };
    const reach = finish(reachStudy(smallShop, run, { longest: 40 }));
    expect(reach.limits.length).toBeGreaterThan(0);
    const [limit] = reach.limits;
    const report = solvedAt(smallShop, reach, limit!.length);
    const { low, high } = smallShop.carryingRange;
    const wanted = { need: 0.12, settles: low, tight: high } as const;
    if (!(limit!.kind in wanted)) throw new Error(`a first limit of another kind: ${limit!.kind}`);
    const figure =
      limit!.kind === 'need' ? dropIn(report, 'lathe').flow : velocityIn(report, limit!.section);
    expect(figure / wanted[limit!.kind as keyof typeof wanted]).toBeCloseTo(1, 6);

    const atEnd = { ...run, target: { ...target, section: 'main', upstreamLength: undefined } };
    const shop = editOf({ kind: 'run', run: atEnd, length: 2 })(smallShop);
    expect(shop.sections.filter(({ into }) => into === 'main')).toHaveLength(3);
    const nowhere = { ...run, target: { ...target, upstreamLength: undefined } };
    expect(() => finish(reachStudy(smallShop, nowhere))).toThrow('branch off in its length');
  });
});

describe('the size of a run', () => {
  it('is searched in a whole family, with the figures of the command line', () => {
    const run = longer('lathe', '5in');
    const found = finish(reachSizeStudy(demo, run, 'galvanised-spiral', 3, { longest: 15 }));
    expect(found.sizes.length).toBeGreaterThan(10);
    for (const { drop, choice, reach } of found.sizes) {
      const [report] = solvedByCommandLine(editOf(choice)(demo), reach.open);
      expect(drop).toEqual(dropIn(report!, 'lathe'));
    }
  });

  it('is best where the drop is served with the most room', () => {
    const run: AddedRun = { ...longer('saw', '100mm'), fittings: [] };
    const small: Shop = {
      ...smallShop,
      sections: smallShop.sections.map((section) =>
        section.id === 'main'
          ? { ...section, pipe: { kind: 'custom', diameter: 0.1, roughness: 9e-5 } }
          : section,
      ),
    };
    const found = finish(reachSizeStudy(small, run, 'galvanised-spiral', 4));
    const best = found.sizes[found.best!]!;
    const room = ({ drop }: typeof best) =>
      Math.min(drop.flow / drop.need!, drop.slowest.velocity / small.carryingRange.low);
    expect(room(best)).toBeGreaterThan(1);
    for (const other of found.sizes) expect(room(best)).toBeGreaterThanOrEqual(room(other));
  });
});

describe('what a longer run costs the others', () => {
  it('is what the command line says before and after', () => {
    const run = longer('planer', '6in');
    const costs = reachCosts(demo, run, 6);
    const edited = editOf({ kind: 'run', run, length: 6 })(demo);
    expect(costs).toHaveLength(demo.gateSets.length);
    for (const { state, others, own } of costs) {
      const [before] = solvedByCommandLine(demo, state.open);
      const [after] = solvedByCommandLine(edited, state.open);
      const changes = own === undefined ? others : [own, ...others];
      expect(changes.map((change) => change.before.id).toSorted()).toEqual(
        [...state.open].toSorted(),
      );
      for (const change of changes) {
        const { id } = change.before;
        expect(change.before.flow / dropIn(before!, id).flow).toBeCloseTo(1, 9);
        expect(change.after.flow / dropIn(after!, id).flow).toBeCloseTo(1, 9);
      }
    }
    expect(costs.some(({ others }) => others.length > 0)).toBe(true);
  });
});
