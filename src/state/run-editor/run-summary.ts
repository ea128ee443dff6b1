// The whole run in one line, for when its editor is folded.

import { pipeWord } from '../../shop/pipe-of.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * How much there is of the run.
 *
 * @param shop - sections and drops
 * @param system - the units to speak in
 * @returns '12 drops, 25 sections: 54.2 m of pipe and 10.9 m of hose'
 */
export function runSummary(shop: Pick<Shop, 'sections' | 'drops'>, system: UnitSystem): string {
  const length = (word: string) =>
    shop.sections
      .filter(({ pipe }) => pipeWord(pipe) === word)
      .reduce((sum, section) => sum + section.length, 0);
  const show = (si: number) => formatQuantity('length', system, si).text;
  const [pipe, hose] = [length('pipe'), length('hose')];
  const long = [
    ...(pipe > 0 ? [`${show(pipe)} of pipe`] : []),
    ...(hose > 0 ? [`${show(hose)} of hose`] : []),
  ].join(' and ');
  const parts = `${counted(shop.drops.length, 'drop')}, ${counted(shop.sections.length, 'section')}`;
  return long === '' ? parts : `${parts}: ${long}`;
}

function counted(count: number, word: string): string {
  return count === 1 ? `1 ${word}` : `${count} ${word}s`;
}
