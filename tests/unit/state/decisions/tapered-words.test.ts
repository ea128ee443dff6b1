import { describe, expect, it } from 'vitest';
import { suggestedMain } from '../../../../src/shop/decisions/main-sections.ts';
import { taperedMainStudy } from '../../../../src/shop/decisions/tapered-main.ts';
import { rowOfSizes } from '../../../../src/state/decisions/pipe-words.ts';
import { taperedSentence } from '../../../../src/state/decisions/tapered-words.ts';
import { finish } from '../../../../src/study/progress.ts';
import { demoShop } from '../demo-shop.ts';

const shop = demoShop();
const main = suggestedMain(shop);
const FAMILY = 'galvanised-spiral';

describe('the sizes that a main is made up of', () => {
  it('are of the row that hangs, whatever the reader’s units', () => {
    const inches = rowOfSizes(shop, main, FAMILY, 'metric');
    expect(inches).toEqual(rowOfSizes(shop, main, FAMILY, 'us'));
    expect(inches).toContain('6in');
    expect(inches.filter((id) => id.endsWith('mm'))).toEqual([]);
    const metric = { kind: 'catalogue', family: FAMILY, size: '160mm' } as const;
    const sections = shop.sections.map((section) => ({ ...section, pipe: metric }));
    const row = rowOfSizes({ sections }, main, FAMILY, 'us');
    expect(row).toContain('160mm');
    expect(row.filter((id) => id.endsWith('in'))).toEqual([]);
  });

  it('are of the reader’s row where nothing of that pipe hangs', () => {
    const other = 'galvanised-snap-lock';
    expect(rowOfSizes(shop, [], other, 'us').every((id) => id.endsWith('in'))).toBe(true);
    expect(rowOfSizes(shop, [], FAMILY, 'metric').every((id) => id.endsWith('mm'))).toBe(true);
  });

  it('are the only ones in the answer, which says whether it is proven', () => {
    const sizes = rowOfSizes(shop, main, FAMILY, 'metric').slice(2, 6);
    const sure = finish(taperedMainStudy(shop, main, FAMILY, { sizes }));
    expect(sure.best.sizes.every((size) => sizes.includes(size))).toBe(true);
    expect(taperedSentence(sure)).toMatch(
      /^In sizes from 5 in\. to 8 in\. this is the best there is/,
    );
    const climbed = finish(taperedMainStudy(shop, main, FAMILY, { sizes, few: 0 }));
    expect(taperedSentence(climbed)).toMatch(/best found, not proven to be the best there is/);
  });
});
