import { describe, expect, it } from 'vitest';
import { casesWords, doubtSentence } from '../../../../src/shop/decisions/doubt-words.ts';
import { type AddedRun, editOf } from '../../../../src/shop/decisions/choice.ts';
import { candidateOf, collectorStudy } from '../../../../src/shop/decisions/collectors.ts';
import {
  collectorSentence,
  footingWords,
} from '../../../../src/shop/decisions/collector-sentence.ts';
import { suggestedMain } from '../../../../src/shop/decisions/main-sections.ts';
import {
  effectWords,
  gainWords,
  mainSentence,
} from '../../../../src/shop/decisions/main-sentence.ts';
import { mainSizeStudy } from '../../../../src/shop/decisions/main-sizes.ts';
import { type Reach, reachStudy } from '../../../../src/shop/decisions/reach.ts';
import { reachSentence } from '../../../../src/shop/decisions/reach-sentence.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { namedOrCounted } from '../../../../src/shop/listed.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { finish } from '../../../../src/study/progress.ts';
import { smallShop } from '../small-shop.ts';
import { demoShop } from './demo.ts';

const demo = demoShop();

describe('a reach in words', () => {
  const pipe = { kind: 'catalogue', family: 'galvanised-spiral', size: '100mm' } as const;
  const run: AddedRun = { target: { kind: 'existing', drop: 'saw' }, pipe, fittings: [] };
  const slow: Shop = { ...smallShop, carryingRange: { low: 4, high: 30 } };
  const longer = editOf({ kind: 'run', run, length: 1 })(slow);
  const reach = finish(reachStudy(slow, run, { longest: 300 }));

  it('names the length and what gives out there', () => {
    if (reach.end.kind !== 'limit') throw new Error('the saw reaches for ever');
    const metres = (Math.floor(100 * reach.length) / 100).toFixed(2);
    expect(reachSentence(longer, reach, 'metric')).toBe(
      `Band saw can reach ${metres}\u2009m further; then it gets less than the 360\u2009m³/h it needs.`,
    );
    const settles: Reach = {
      ...reach,
      end: { kind: 'limit', limit: { ...reach.end.limit, kind: 'settles', section: 'main' } },
    };
    expect(reachSentence(longer, settles, 'us')).toMatch(
      /^Band saw can reach \d+' \d+" further; then Main falls below 790\u2009ft\/min, and chips settle\.$/,
    );
  });

  it('says where nothing gives out, and where all is out from the start', () => {
    const whole: Reach = { ...reach, end: { kind: 'not within' }, limits: [], longest: 30 };
    expect(reachSentence(longer, whole, 'metric')).toBe(
      'Band saw can reach 30.00\u2009m further and more: nothing gives out.',
    );
    const from = (fault: 'need' | 'settles' | 'no operating point'): Reach => ({
      ...whole,
      end: { kind: 'from the start', fault, section: 'saw-run' },
    });
    const words = (each: Reach) => reachSentence(longer, each, 'metric');
    expect(words(from('need'))).toContain('short of the 360\u2009m³/h it needs as it is');
    expect(words(from('settles'))).toContain('section saw-run runs below 4.0\u2009m/s as it is');
    expect(words(from('no operating point'))).toContain('no steady flow');
  });

  it('says where the curve is doubtful on the way, and where it comes right again', () => {
    if (reach.end.kind !== 'limit') throw new Error('the saw reaches for ever');
    const at = { section: undefined, leaps: false } as const;
    const doubtful: Reach = {
      ...reach,
      end: { kind: 'limit', limit: { ...reach.end.limit, leaps: true } },
      limits: [
        { kind: 'left of the peak', length: 0.5, effect: 'begins', ...at },
        { ...reach.end.limit, effect: 'begins' },
        { ...reach.end.limit, length: reach.length + 2, effect: 'ends' },
      ],
    };
    const text = reachSentence(longer, doubtful, 'metric');
    expect(text).toContain('drops to another operating point');
    expect(text).toContain('From 0.50\u2009m on the collector runs left of the peak');
    expect(text).toContain('It comes right again at');
  });
});

describe('a main in words', () => {
  const { rows } = finish(mainSizeStudy(demo, suggestedMain(demo), 'galvanised-spiral'));

  it('says whom each size helps and hurts', () => {
    for (const row of rows) {
      const text = mainSentence(demo, row);
      const count = (kind: string) => row.drops.filter((drop) => drop.kind === kind).length;
      expect(text).toContain(row.size.name);
      expect(text.includes(' helps ')).toBe(count('helps') + count('second gate') > 0);
      expect(text.includes(' hurts ')).toBe(count('hurts') > 0);
    }
  });

  it('names the number that each drop turns on, and the second gate', () => {
    const drops = rows.flatMap((row) => row.drops);
    const words = (kind: string) =>
      effectWords(demo, drops.find((drop) => drop.kind === kind)!, 'us');
    expect(words('helps')).toMatch(/^helps: .*air, [\d,]+\u2009cfm$/);
    expect(words('hurts')).toMatch(/^hurts: .*cfm/);
    expect(words('second gate')).toMatch(/^only with .+ open too, then .*cfm; alone it settles: /);
    expect(words('same')).toMatch(/^no change: as much air, /);
    expect([gainWords(0.124), gainWords(-0.071), gainWords(0.001)]).toEqual([
      '12\u2009% more air',
      '7\u2009% less air',
      'as much air',
    ]);
  });
});

describe('collectors in words', () => {
  const candidates = [demo.collector, ...exampleCurves().map((curve) => candidateOf(demo, curve))];
  const rows = finish(collectorStudy(demo, candidates));

  it('names those that serve the most, and what a served drop costs', () => {
    const most = Math.max(...rows.map(({ served }) => served));
    const text = collectorSentence(rows, demo.drops.length);
    expect(text).toContain(`${most} of ${demo.drops.length} drops, each alone`);
    expect(collectorSentence(rows.slice(0, 1), demo.drops.length)).toContain(
      `That is ${Math.round(3200 / rows[0]!.served)} USD for each drop served.`,
    );
    const none = rows.map((row) => ({ ...row, served: 0 }));
    expect(collectorSentence(none, 12)).toBe('None of these collectors serves any drop alone.');
  });

  it('compares prices in one currency only', () => {
    const [first] = rows;
    const price = { amount: 100, currency: 'EUR' };
    const other = { ...first!, name: 'Another', pricePerDrop: price };
    expect(collectorSentence([first!, other], demo.drops.length)).not.toContain('costs');
    const cheap = { ...other, pricePerDrop: { ...price, currency: 'USD' } };
    expect(collectorSentence([first!, cheap], demo.drops.length)).toContain(
      'Of these Another costs the least for each drop served: 100 USD.',
    );
  });

  it('has a sentence for each step to a common footing', () => {
    const texts = [
      footingWords({ kind: 'tap', diameter: 0.1524 }, 'us'),
      footingWords({ kind: 'density', from: 1.2, to: 1.05 }, 'metric'),
      footingWords({ kind: 'speed', ratio: 50 / 60 }, 'us'),
      footingWords({ kind: 'filter in the points', blinding: 2 }, 'us'),
      footingWords({ kind: 'no filter counted' }, 'us'),
    ];
    expect(texts[0]).toContain('6\u2009in');
    expect(texts[1]).toContain('kg/m³');
    expect(texts[2]).toContain('83.3\u2009%');
    expect(new Set(texts).size).toBe(texts.length);
    for (const text of texts) expect(text).toMatch(/^[A-Z].*\.$/);
  });
});

describe('doubt in words', () => {
  it('never rounds to all or none', () => {
    expect([1, 0.999, 0.94, 0.5, 0.06, 0.001, 0].map(casesWords)).toEqual([
      'in every case',
      'in nearly every case',
      'in 9 of 10 cases',
      'in 5 of 10 cases',
      'in 1 of 10 cases',
      'in hardly any case',
      'in no case',
    ]);
  });

  it('says what a verdict still does', () => {
    expect(doubtSentence({ verdict: 'carries', holds: 0.91 })).toBe(
      'In 9 of 10 cases it still carries.',
    );
    expect(doubtSentence({ verdict: 'settles', holds: 1 })).toBe(
      'In every case it still settles or falls short.',
    );
    expect(doubtSentence({ verdict: 'shut', holds: 1 })).toBe('');
  });

  it('names few and counts many', () => {
    expect(namedOrCounted(['A', 'B', 'C'], 3, 'drops')).toBe('A, B and C');
    expect(namedOrCounted(['A', 'B', 'C', 'D'], 3, 'drops')).toBe('4 drops');
  });
});
