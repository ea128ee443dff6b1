// What a decision comes to can be sent from a worker, taken over, and priced by the metre.
import { describe, expect, it } from 'vitest';
import { type Choice, editOf } from '../../../../src/shop/decisions/choice.ts';
import { candidateOf, collectorStudy } from '../../../../src/shop/decisions/collectors.ts';
import { collectorDoubtStudy } from '../../../../src/shop/decisions/collector-doubt.ts';
import { mainPipes, mainSizeStudy } from '../../../../src/shop/decisions/main-sizes.ts';
import { mainDoubtStudy } from '../../../../src/shop/decisions/main-doubt.ts';
import { pipeBought } from '../../../../src/shop/decisions/pipe-bought.ts';
import { reachStudy } from '../../../../src/shop/decisions/reach.ts';
import { reachCosts } from '../../../../src/shop/decisions/reach-costs.ts';
import { reachDoubtStudy } from '../../../../src/shop/decisions/reach-doubt.ts';
import { reachSizeStudy } from '../../../../src/shop/decisions/reach-sizes.ts';
import { taperedMainStudy } from '../../../../src/shop/decisions/tapered-main.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { openShopDocument } from '../../../../src/shop/open-shop.ts';
import { finish, type Study } from '../../../../src/study/progress.ts';
import { smallShop } from '../small-shop.ts';

const shop = smallShop;
const pipe = { kind: 'catalogue', family: 'galvanised-snap-lock', size: '5in' } as const;
const run = { target: { kind: 'existing', drop: 'saw' }, pipe, fittings: [] } as const;
const curves = exampleCurves().map((curve) => candidateOf(shop, curve));
const sizes = () => mainSizeStudy(shop, ['main'], 'galvanised-snap-lock');

const STUDIES: readonly (readonly [string, () => Study<unknown>])[] = [
  ['a reach', () => reachStudy(shop, run)],
  ['a reach in every size', () => reachSizeStudy(shop, run, 'galvanised-snap-lock', 2)],
  ['a doubted reach', () => reachDoubtStudy(shop, run)],
  ['mains', sizes],
  ['doubted mains', () => mainDoubtStudy(shop, finish(sizes()))],
  ['a tapered main', () => taperedMainStudy(shop, ['main'], 'galvanised-snap-lock')],
  ['collectors', () => collectorStudy(shop, curves)],
  ['doubted collectors', () => collectorDoubtStudy(shop, curves)],
];

describe.each(STUDIES)('the study of %s', (_, study) => {
  it('goes forward step by step to its end, and its result can be sent', () => {
    const under = study();
    let last = { done: 0, total: 1 };
    let steps = 0;
    for (;;) {
      const step = under.next();
      if (step.done === true) {
        expect(structuredClone(step.value)).toEqual(step.value);
        break;
      }
      steps += 1;
      expect(step.value.done).toBeGreaterThanOrEqual(last.done);
      expect(step.value.done).toBeLessThanOrEqual(step.value.total);
      last = step.value;
    }
    expect(steps).toBeGreaterThan(3);
    expect(last.done).toBe(last.total);
  });
});

describe('a choice', () => {
  const choices: readonly Choice[] = [
    { kind: 'run', run, length: 4 },
    { kind: 'pipes', pipes: mainPipes(shop, ['main', 'planer-run'], pipe.family, '7in') },
    { kind: 'collector', collector: curves[0]! },
  ];

  it.each(choices)(
    'taken over ($kind) is a document in order, and the old one is as it was',
    (choice) => {
      const before = structuredClone(shop);
      const edited = editOf(structuredClone(choice))(shop);
      expect(openShopDocument(edited)).toMatchObject({ kind: 'opened' });
      expect(shop).toEqual(before);
      expect(edited).not.toEqual(shop);
    },
  );

  it('that changes nothing is the very same document', () => {
    expect(editOf({ kind: 'pipes', pipes: [] })(shop)).toBe(shop);
    expect(editOf({ kind: 'collector', collector: shop.collector })(shop)).toBe(shop);
  });

  it('takes pipe by its length: what is new, longer, or of another kind', () => {
    const bought = (choice: Choice) => pipeBought(shop, editOf(choice)(shop));
    expect(bought({ kind: 'run', run, length: 4 })).toEqual([{ pipe, length: 4 }]);
    const own = shop.sections.find(({ id }) => id === 'saw-run')!.pipe;
    expect(bought({ kind: 'run', run: { ...run, pipe: own }, length: 1.5 })).toEqual([
      { pipe: own, length: 1.5 },
    ]);
    expect(bought(choices[1]!)).toEqual([{ pipe: { ...pipe, size: '7in' }, length: 9 }]);
    expect(bought(choices[2]!)).toEqual([]);
  });

  it('costs the other drops of a set something, and the set is told whole', () => {
    const [cost] = reachCosts(shop, run, 3);
    expect(cost!.others.map(({ before }) => before.id)).toEqual(['planer']);
    expect(cost!.own!.after.flow).toBeLessThan(cost!.own!.before.flow);
    expect(structuredClone(cost)).toEqual(cost);
  });
});
