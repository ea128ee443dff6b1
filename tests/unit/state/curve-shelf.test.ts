import { describe, expect, it } from 'vitest';
import { exampleCurves } from '../../../src/shop/example-curves.ts';
import type { CurveStore } from '../../../src/shop/store/curve-store.ts';
import { MemoryCurveStore } from '../../../src/shop/store/memory-curve-store.ts';
import { CurveShelf } from '../../../src/state/curve-shelf.ts';

const [first, second] = exampleCurves();
function shelfOn(store: CurveStore): CurveShelf {
  let count = 0;
  return new CurveShelf({ store, newId: () => `new ${++count}`, now: () => count });
}
const namesOf = (shelf: CurveShelf) => shelf.curves.value.map(({ curve }) => curve.name);

describe('the shelf of curves', () => {
  it('keeps curves over visits, changes them, and puts a deleted one back', async () => {
    const store = new MemoryCurveStore();
    const shelf = shelfOn(store);
    await shelf.keep(first!);
    await shelf.keep(second!);
    await shelf.change('new 1', { ...first!, name: 'Ours', note: 'after the new belt' });
    const again = shelfOn(store);
    await again.load();
    expect(namesOf(again).toSorted()).toEqual(['Ours', second!.name].toSorted());
    await again.remove('new 1');
    expect(namesOf(again)).toEqual([second!.name]);
    expect(await store.readAll()).toHaveLength(1);
    again.notice.value!.undo!();
    await Promise.resolve();
    expect(namesOf(again)).toContain('Ours');
  });

  it('takes in files and tells what was left out, where and why', async () => {
    const shelf = shelfOn(new MemoryCurveStore());
    await shelf.keep(first!);
    await shelf.addFiles([
      { name: 'good.json', text: JSON.stringify([first, second]) },
      { name: 'bad.json', text: '{"format": "other"}' },
    ]);
    expect(namesOf(shelf)).toHaveLength(3);
    expect(shelf.notice.value!.text).toBe('2 curves were taken in. Left out:');
    expect(shelf.notice.value!.problems![0]!.place).toBe('“bad.json”, format');
  });

  it('leaves what it can’t open, and says so; and says where nothing is kept', async () => {
    const odd = { id: 'a', document: { format: 'of tomorrow' }, written: 1 };
    const store = new MemoryCurveStore([odd]);
    const shelf = shelfOn(store);
    await shelf.load();
    expect(shelf.notice.value!.text).toMatch(/^1 kept curve can’t be opened/);
    expect(await store.readAll()).toEqual([odd]);
    class Refusing extends MemoryCurveStore {
      override write(): Promise<void> {
        return Promise.reject(new Error('no room'));
      }
    }
    const refused = shelfOn(new Refusing());
    await refused.keep(first!);
    expect(refused.notice.value!.text).toMatch(/does not keep curves: no room/);
    expect(namesOf(refused)).toEqual([first!.name]);
  });
});
