// Two tabs on one shop, edited at random, while messages between them and their turns to write come
// late and in any order. Whatever was edited is there at the end, unless the reader was told.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { setLength } from '../../../src/shop/edits/edit-section.ts';
import { renameShop } from '../../../src/shop/edits/edit-shop.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';
import { MemoryStore } from '../../../src/shop/store/memory-store.ts';
import type { ShopRecord } from '../../../src/shop/store/shop-store.ts';
import { Shelf } from '../../../src/state/shelf.ts';
import { FakeBrowser } from '../../setup/fake-tabs.ts';
import { seededChance } from '../../setup/seeded-chance.ts';
import { demoShop } from './demo-shop.ts';

const demo = demoShop();
const start: ShopRecord = { id: 'shop', document: demo, written: 1 };
const SECTIONS = demo.sections.slice(0, 6).map(({ id }) => id);

function openTabs(count: number, store = new MemoryStore([start])) {
  const browser = new FakeBrowser();
  let time = 1000;
  const open = () =>
    new Shelf({
      store,
      records: [start],
      tabs: browser.tab(),
      demo,
      units: 'us',
      newId: () => `new-${time++}`,
      now: () => time++,
    });
  return { browser, store, shelves: Array.from({ length: count }, open) };
}
const nameIn = (shelf: Shelf) => shelf.open.value.session.shop.value.name;
const lengthsOf = ({ sections }: Shop) =>
  new Map(sections.map(({ id, length }) => [id, length] as const));

describe('two tabs on one shop', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  /** Lets everything that is under way arrive. */
  async function settle(browser: FakeBrowser, chance = () => 0) {
    for (let round = 0; round < 100; round++) {
      let isMoving = false;
      while (browser.deliver(chance)) isMoving = true;
      await vi.advanceTimersByTimeAsync(50);
      if (!isMoving && round > 8) return;
    }
  }

  it('shows in each what is edited in the other, whoever began', async () => {
    const { browser, store, shelves } = openTabs(2);
    await settle(browser);
    shelves[0]!.open.value.session.edit(renameShop('From the first'));
    await settle(browser);
    expect(shelves.map(nameIn)).toEqual(['From the first', 'From the first']);
    shelves[1]!.open.value.session.edit(renameShop('From the second'));
    await settle(browser);
    expect(shelves.map(nameIn)).toEqual(['From the second', 'From the second']);
    expect((await store.read('shop'))?.document).toMatchObject({ name: 'From the second' });
    expect(shelves.map((shelf) => shelf.notice.value)).toEqual([undefined, undefined]);
  });

  it('undoes in one what was done in the other', async () => {
    const { browser, shelves } = openTabs(2);
    await settle(browser);
    shelves[0]!.open.value.session.edit(renameShop('Done'));
    await settle(browser);
    shelves[1]!.open.value.session.undo();
    await settle(browser);
    expect(shelves.map(nameIn)).toEqual([demo.name, demo.name]);
  });

  it('says so in both where both were edited before either knew, and keeps both', async () => {
    const { browser, store, shelves } = openTabs(2);
    await settle(browser);
    shelves[0]!.open.value.session.edit(renameShop('One'));
    shelves[1]!.open.value.session.edit(renameShop('Two'));
    await settle(browser);
    const stands = nameIn(shelves[0]!);
    expect(shelves.map(nameIn)).toEqual([stands, stands]);
    const versions = await store.versions('shop');
    const lost = stands === 'One' ? 'Two' : 'One';
    expect(versions.map(({ document }) => (document as Shop).name)).toContain(lost);
    for (const shelf of shelves) expect(shelf.notice.value?.text).toMatch(/two tabs at once/);
  });

  it('goes on after the tab that led has gone, with what it had written', async () => {
    const { browser, shelves } = openTabs(2);
    await settle(browser);
    shelves[0]!.open.value.session.edit(renameShop('Last words'));
    await settle(browser);
    shelves[0]!.openDemo();
    await settle(browser);
    shelves[1]!.open.value.session.edit(setLength(SECTIONS[0]!, 7));
    await settle(browser);
    expect(nameIn(shelves[1]!)).toBe('Last words');
    expect(shelves[1]!.shops.value[0]?.record.document).toMatchObject({ name: 'Last words' });
  });

  it('takes over from a tab that does not answer, and says so first', async () => {
    const { browser, store, shelves } = openTabs(2);
    await settle(browser);
    // Its write never ends, so it never hands over.
    const stuck = vi.spyOn(store, 'write').mockImplementation(() => new Promise(() => {}));
    shelves[0]!.open.value.session.edit(renameShop('Stuck'));
    shelves[1]!.open.value.session.edit(renameShop('Moving'));
    await vi.advanceTimersByTimeAsync(2000);
    while (browser.deliver(() => 0));
    expect(shelves[1]!.notice.value?.text).toMatch(/does not answer/);
    stuck.mockRestore();
    shelves[1]!.notice.value?.action?.act();
    await settle(browser);
    expect((await store.read('shop'))?.document).toMatchObject({ name: 'Moving' });
  });

  it.each([1, 2])('loses nothing untold in 1,000 random steps, seed %d', async (seed) => {
    const chance = seededChance(seed);
    const { browser, store, shelves } = openTabs(2);
    await settle(browser, chance);
    /** By section, the length that was entered last, until the reader is told of something. */
    const expected = new Map<string, number>();
    let edits = 0;
    let told = 0;
    for (let step = 0; step < 1000; step++) {
      const draw = chance();
      const shelf = shelves[draw < 0.25 ? 0 : 1]!;
      if (draw < 0.5) {
        const section = SECTIONS[Math.floor(chance() * SECTIONS.length)]!;
        const length = 1 + step / 1000;
        shelf.open.value.session.edit(setLength(section, length));
        expected.set(section, length);
        edits += 1;
      } else if (draw < 0.9) browser.deliver(chance);
      else await vi.advanceTimersByTimeAsync(10);
      if (shelves.some(({ notice }) => /two tabs at once/.test(notice.value?.text ?? ''))) {
        for (const each of shelves) each.dismiss();
        // What was told of lies among the versions; from here on all must hold again.
        await settle(browser, chance);
        for (const each of shelves) each.dismiss();
        const now = lengthsOf(shelf.open.value.session.shop.value);
        const aside = (await store.versions('shop')).map((each) => each.document as Shop);
        for (const [id, length] of expected) {
          const isAside = aside.some((document) => lengthsOf(document).get(id) === length);
          expect(isAside || now.get(id) === length, `step ${step}, ${id}`).toBe(true);
          expected.set(id, now.get(id) ?? 0);
        }
        told += 1;
      }
    }
    await settle(browser, chance);
    const isTold = shelves.some(({ notice }) => /two tabs/.test(notice.value?.text ?? ''));
    const documents = [
      (await store.read('shop'))?.document as Shop,
      ...shelves.map((shelf) => shelf.open.value.session.shop.value),
    ];
    for (const document of documents) {
      expect(document).toEqual(documents[0]);
      if (isTold) continue;
      const lengths = lengthsOf(document);
      for (const [id, length] of expected) expect(lengths.get(id), id).toBe(length);
    }
    expect(edits).toBeGreaterThan(400);
    expect(told).toBeGreaterThan(0);
    expect(told).toBeLessThan(edits / 4);
  });
});
