import { describe, expect, it } from 'vitest';
import { editOf } from '../../../../src/shop/decisions/choice.ts';
import {
  mainFamily,
  sharedSections,
  suggestedMain,
} from '../../../../src/shop/decisions/main-sections.ts';
import { type MainRow, mainSizeStudy } from '../../../../src/shop/decisions/main-sizes.ts';
import { servedIn } from '../../../../src/shop/decisions/main-score.ts';
import { isServed } from '../../../../src/shop/decisions/solved-states.ts';
import { taperedMainStudy } from '../../../../src/shop/decisions/tapered-main.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import type { StateReport } from '../../../../src/shop/state-report.ts';
import { finish } from '../../../../src/study/progress.ts';
import { randomShop } from '../../../setup/random-shop.ts';
import { seededRandom } from '../../../setup/random-tree.ts';
import { smallShop } from '../small-shop.ts';
import { solvedByCommandLine } from './command-line.ts';
import { demoShop } from './demo.ts';

const demo = demoShop();
const trunk = suggestedMain(demo);
const sizes = finish(mainSizeStudy(demo, trunk, 'galvanised-spiral'));

/** What a row says must be what the command line says of the edited file, to the last digit. */
function expectSame(shop: Shop, row: Pick<MainRow, 'states'>, sections: readonly string[]): void {
  const reports = solvedByCommandLine(shop);
  expect(reports).toHaveLength(row.states.length);
  row.states.forEach((state, i) => {
    const report = reports[i]!;
    expect(state.drops).toEqual(report.drops.filter(({ travel }) => travel > 0));
    expect(state.flow).toBe(report.operatingPoint?.flow);
    expect(state.outcome).toBe(report.outcome);
    expect(state.mainSlowest).toEqual(slowestOf(shop, report, sections));
  });
}

/** The slowest of the main's sections that air of the open drops passes, read from the report. */
function slowestOf(shop: Shop, report: StateReport, sections: readonly string[]) {
  const into = new Map(shop.sections.map((section) => [section.id, section.into]));
  const isPassed = (id: string) =>
    report.open.some((drop) => {
      let at = shop.drops.find((each) => each.id === drop)?.into;
      while (at !== undefined && at !== id) at = into.get(at);
      return at === id;
    });
  const { id, velocity } = report.sections
    .filter((section) => sections.includes(section.id) && isPassed(section.id))
    .toSorted((a, b) => a.velocity - b.velocity)[0]!;
  return { section: id, velocity };
}

describe('the sections that count as the main', () => {
  it('are the trunk from the flange up to the last wye', () => {
    expect(trunk).toEqual([
      'main-1',
      'main-2',
      'main-3',
      'main-4',
      'main-5',
      'main-6',
      'band-line',
    ]);
    expect(suggestedMain(smallShop)).toEqual(['main']);
    expect(sharedSections(demo)).toEqual(expect.arrayContaining(['west-1', 'west-4', ...trunk]));
    expect(sharedSections(demo)).not.toContain('table-saw');
  });

  it('are of the family of the first that is of the catalogue', () => {
    expect(mainFamily(demo, trunk)).toBe('galvanised-spiral');
    expect(mainFamily(smallShop, ['main'])).toBe('galvanised-spiral');
  });
});

describe('a main of another size', () => {
  it('has in each row and state the figures of a separate solve of the edited file', () => {
    expect(sizes.rows.length).toBeGreaterThan(10);
    for (const row of sizes.rows) expectSame(editOf(row.choice)(demo), row, trunk);
    expectSame(demo, sizes.today, trunk);
  });

  it('has them on random shops too, whatever the collector and the wyes', () => {
    for (const seed of [1, 2, 3, 4]) {
      const shop = randomShop(seededRandom(seed), {
        drops: 5,
        wyes: seed % 2 === 0 ? 'fixed' : 'momentum',
        curve: seed > 2 ? 'humped' : 'falling',
        gateSets: 3,
      });
      const main = suggestedMain(shop);
      for (const row of finish(mainSizeStudy(shop, main, 'galvanised-snap-lock')).rows) {
        expectSame(editOf(row.choice)(shop), row, main);
      }
    }
  });

  it('is known as the one of today where it is', () => {
    // The last of the trunk is of plastic, so that no one size of steel is the trunk of today.
    expect(sizes.rows.filter(({ isToday }) => isToday)).toEqual([]);
    const steel = trunk.slice(0, -1);
    const { rows } = finish(mainSizeStudy(demo, steel, mainFamily(demo, steel)));
    expect(rows.filter(({ isToday }) => isToday).map(({ size }) => size.id)).toEqual(['6in']);
    const today = rows.find(({ isToday }) => isToday)!;
    for (const drop of today.drops) expect(drop).toMatchObject({ gain: 0 });
  });

  it('may give every drop more air and yet hurt: the speed in the main falls too low', () => {
    const wider = sizes.rows.find(({ size }) => size.id === '8in')!;
    const planer = wider.drops.find(({ id }) => id === 'planer')!;
    expect(planer.gain).toBeGreaterThan(0.01);
    expect(planer.before.verdict).not.toBe('settles');
    expect(planer.after.verdict).toBe('settles');
    expect(trunk).toContain(planer.after.slowest.section);
    expect(['hurts', 'second gate']).toContain(planer.kind);
  });

  it('names a second gate that keeps a large main clean, as the command line finds it', () => {
    const seen = new Set<string>();
    for (const row of sizes.rows) {
      const shop = editOf(row.choice)(demo);
      for (const drop of row.drops) {
        seen.add(drop.kind);
        for (const bleed of drop.bleeds) {
          const [report] = solvedByCommandLine(shop, [drop.id, bleed.drop]);
          const now = report!.drops.find(({ id }) => id === drop.id)!;
          expect(now.flow).toBeCloseTo(bleed.report.flow, 9);
          expect(isServed(now)).toBe(true);
          expect(isServed(drop.before) ? now.flow >= drop.before.flow : true).toBe(true);
        }
        expect(drop.kind === 'second gate' ? drop.bleeds.length : 1).toBeGreaterThan(0);
      }
    }
    expect([...seen].toSorted()).toEqual(['helps', 'hurts', 'same', 'second gate']);
  });

  it('finds no second gate only where the command line finds none either', () => {
    const row = sizes.rows.find(({ size }) => size.id === '7in')!;
    const shop = editOf(row.choice)(demo);
    for (const drop of row.drops.filter(({ after }) => after.verdict === 'settles')) {
      const would = demo.drops.filter(({ id }) => {
        if (id === drop.id) return false;
        const [report] = solvedByCommandLine(shop, [drop.id, id]);
        const now = report!.drops.find((each) => each.id === drop.id)!;
        return isServed(now) && (now.flow >= drop.before.flow || !isServed(drop.before));
      });
      expect(drop.bleeds.length).toBe(Math.min(3, would.length));
    }
  });
});

/** Places that nowhere fall, from the flange outwards: each is at most as high as the one before. */
function* ordered(count: number, most: number): Generator<readonly number[], void, void> {
  if (count === 0) {
    yield [];
    return;
  }
  for (let first = 0; first <= most; first++) {
    for (const rest of ordered(count - 1, first)) yield [first, ...rest];
  }
}

describe('a tapered main', () => {
  const shop = randomShop(seededRandom(12), { drops: 4, wyes: 'momentum', curve: 'falling' });
  const main = suggestedMain(shop);
  const found = finish(taperedMainStudy(shop, main, 'galvanised-snap-lock'));

  it('is at least as good as the best one of one size, and never narrows', () => {
    expect(found.best.score.served).toBeGreaterThanOrEqual(found.bestUniform.score.served);
    const { best, sections } = found;
    const edited = editOf(best.choice)(shop);
    for (const [i, id] of sections.entries()) {
      const next = sections.indexOf(edited.sections.find((each) => each.id === id)!.into);
      const inches = (at: number) => Number.parseFloat(best.sizes[at]!);
      if (next >= 0) expect(inches(next)).toBeGreaterThanOrEqual(inches(i));
    }
  });

  it('is found by climbing too where that is lucky, and never a better one than among all', () => {
    let alike = 0;
    for (const seed of [3, 4, 5, 6, 7, 8]) {
      const other = randomShop(seededRandom(seed), {
        drops: 3,
        wyes: 'momentum',
        curve: 'falling',
      });
      const sections = suggestedMain(other);
      const every = finish(taperedMainStudy(other, sections, 'galvanised-snap-lock'));
      const climbed = finish(taperedMainStudy(other, sections, 'galvanised-snap-lock', { few: 0 }));
      expect([every.search, climbed.search]).toEqual(['every one', 'climbing']);
      expect(climbed.best.score.served).toBeLessThanOrEqual(every.best.score.served);
      expect(climbed.best.score.served).toBeGreaterThanOrEqual(climbed.bestUniform.score.served);
      alike += climbed.best.score.served === every.best.score.served ? 1 : 0;
    }
    expect(alike).toBeGreaterThan(3);
  });

  it('is the best of all that there are, as trying every single one shows', () => {
    let narrowed = 0;
    for (const seed of [21, 22, 23, 24, 25, 26]) {
      const other = randomShop(seededRandom(seed), {
        drops: 4,
        wyes: seed % 2 === 0 ? 'momentum' : 'fixed',
        curve: seed % 3 === 0 ? 'humped' : 'falling',
      });
      const sections = suggestedMain(other);
      const row = ['4in', '5in', '6in', '7in', '8in', '10in', '14in', '16in'];
      const search = taperedMainStudy(other, sections, 'galvanised-spiral', { sizes: row });
      const { best, tried, search: how } = finish(search);
      const all = [...ordered(sections.length, row.length - 1)].map((places) => {
        const pipes = sections.map((section, i) => {
          const size = row[places[i]!]!;
          return {
            section,
            pipe: { kind: 'catalogue', family: 'galvanised-spiral', size },
          } as const;
        });
        return servedIn(editOf({ kind: 'pipes', pipes })(other))!;
      });
      const most = Math.max(...all.map(({ served }) => served));
      const room = Math.max(...all.flatMap((each) => (each.served === most ? [each.room] : [])));
      expect(how).toBe('every one');
      expect(best.score.served).toBe(most);
      // Room that differs by less than 1e-3 counts as alike, then the main with less pipe is better.
      expect(best.score.room).toBeGreaterThan(room - 2e-3);
      narrowed += tried < all.length ? 1 : 0;
    }
    expect(narrowed).toBeGreaterThan(0);
  });

  it('counts the drops that the command line finds served', () => {
    expectSame(editOf(found.best.choice)(shop), found.figures, main);
    const drops = found.figures.states.flatMap((state) => state.drops);
    expect(found.best.score.asked).toBe(drops.length);
    expect(found.best.score.served).toBe(drops.filter(isServed).length);
  });
});
