import { describe, expect, it } from 'vitest';
import { renameShop } from '../../../src/shop/edits/edit-shop.ts';
import { removeDrop } from '../../../src/shop/edits/remove-part.ts';
import { openShop } from '../../../src/shop/open-shop.ts';
import { MemoryStore } from '../../../src/shop/store/memory-store.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';
import type { ShopRecord, ShopStore, Writing } from '../../../src/shop/store/shop-store.ts';
import { Shelf } from '../../../src/state/shelf.ts';
import { shelvedName } from '../../../src/state/shelved.ts';
import { demoShop } from './demo-shop.ts';

const demo = demoShop();

/** A shelf whose clock ticks once a call and whose ids count up. */
function shelfOn(store: ShopStore, records: readonly ShopRecord[] = []): Shelf {
  let ids = 0;
  let time = 1000;
  return new Shelf({
    store,
    records,
    demo,
    units: 'us',
    newId: () => `id-${++ids}`,
    now: () => ++time,
  });
}
const recordOf = (id: string, written: number, document: unknown = demo): ShopRecord => ({
  id,
  document,
  written,
});
const names = (shelf: Shelf) => shelf.shops.value.map(shelvedName);
const openName = (shelf: Shelf) => shelf.open.value.session.shop.value.name;

describe('the shelf', () => {
  it('opens on the demo, which is kept from its first edit on', async () => {
    const store = new MemoryStore();
    const shelf = shelfOn(store);
    expect(openName(shelf)).toBe('Heron Lane paddle works');
    expect(await store.readAll()).toEqual([]);
    shelf.open.value.session.edit(renameShop('Mine'));
    await shelf.idle();
    expect((await store.readAll()).map(({ id }) => id)).toEqual(['id-1']);
    expect(names(shelf)).toEqual(['Mine']);
  });

  it('keeps every edit, undo too, as it would be opened next time', async () => {
    const store = new MemoryStore();
    const shelf = shelfOn(store);
    const { session } = shelf.open.value;
    session.edit(removeDrop('lathe'));
    session.edit(renameShop('Without a lathe'));
    session.undo();
    await shelf.idle();
    const later = shelfOn(store, await store.readAll());
    expect(later.open.value.session.shop.value).toEqual(session.shop.value);
  });

  it('opens the shop that was written last, with its first gate set or drop open', () => {
    const records = [recordOf('old', 1, { ...demo, name: 'Old', gateSets: [] }), recordOf('b', 5)];
    const shelf = shelfOn(new MemoryStore(records), records);
    expect(shelf.open.value.id).toBe('b');
    expect(shelf.open.value.session.report.value.open).toEqual(['table-saw', 'blade-guard']);
    shelf.openKept('old');
    expect(shelf.open.value.session.report.value.open).toEqual(['table-saw']);
  });

  it('keeps the units from shop to shop', () => {
    const records = [recordOf('a', 1), recordOf('b', 5)];
    const shelf = shelfOn(new MemoryStore(records), records);
    shelf.open.value.session.units.value = 'metric';
    shelf.openKept('a');
    expect(shelf.open.value.session.units.value).toBe('metric');
    expect(shelf.units.value).toBe('metric');
  });

  it('copies under a name of its own', () => {
    const records = [recordOf('a', 1)];
    const shelf = shelfOn(new MemoryStore(records), records);
    shelf.duplicate('a');
    shelf.duplicate('a');
    expect(names(shelf).toSorted()).toEqual([
      'Heron Lane paddle works',
      'Heron Lane paddle works, copy',
      'Heron Lane paddle works, copy 2',
    ]);
    expect(shelf.open.value.id).toBe('a');
  });

  it('renames the open shop as an edit and another one where it lies', () => {
    const records = [recordOf('a', 1, { ...demo, name: 'A' }), recordOf('b', 5)];
    const shelf = shelfOn(new MemoryStore(records), records);
    shelf.rename('b', '  Bee ');
    expect(openName(shelf)).toBe('Bee');
    shelf.open.value.session.undo();
    expect(openName(shelf)).toBe('Heron Lane paddle works');
    shelf.rename('a', 'Ay');
    shelf.rename('a', '   ');
    expect(names(shelf)).toContain('Ay');
  });

  it('deletes, opens what is left, and puts back what was deleted', async () => {
    const records = [recordOf('a', 1, { ...demo, name: 'A' }), recordOf('b', 5)];
    const store = new MemoryStore(records);
    const shelf = shelfOn(store, records);
    shelf.remove('b');
    expect([openName(shelf), names(shelf)]).toEqual(['A', ['A']]);
    await shelf.idle();
    expect(await store.readAll()).toHaveLength(1);
    shelf.notice.value?.undo?.();
    await shelf.idle();
    expect(await store.readAll()).toContainEqual({ ...records[1], revision: 1 });
    expect(shelf.open.value.id).toBe('b');
    expect(shelf.notice.value).toBeUndefined();
    shelf.remove('a');
    shelf.remove('b');
    expect(openName(shelf)).toBe('Heron Lane paddle works');
    expect(names(shelf)).toEqual([]);
  });

  it('leaves a record that it can’t open as it was, and says so', async () => {
    const broken = recordOf('x', 9, { format: 'dropcurve-shop', version: 99, name: 'From later' });
    const store = new MemoryStore([broken]);
    const shelf = shelfOn(store, [broken]);
    expect(openName(shelf)).toBe('Heron Lane paddle works');
    expect(shelf.notice.value?.text).toMatch(/^One kept shop could not be opened/);
    expect(shelf.shops.value).toMatchObject([{ kind: 'unreadable' }]);
    shelf.openKept('x');
    shelf.duplicate('x');
    shelf.rename('x', 'Y');
    await shelf.idle();
    expect(await store.readAll()).toEqual([broken]);
    expect(JSON.parse(shelf.file('x')!.text)).toEqual(broken.document);
    expect(shelf.file('x')!.name).toBe('from-later.json');
  });

  it('opens the file of a shop as a new one, equal to what was saved', () => {
    const shelf = shelfOn(new MemoryStore());
    const file = shelf.file(shelf.open.value.id)!;
    expect(openShop(file.text)).toEqual({ kind: 'opened', shop: demo });
    shelf.addFile(file);
    expect(names(shelf)).toEqual(['Heron Lane paddle works']);
    expect(shelf.notice.value?.text).toContain('heron-lane-paddle-works.json');
  });

  it('refuses a file in words and leaves open what was open', () => {
    const shelf = shelfOn(new MemoryStore());
    const before = shelf.open.value;
    const text = JSON.stringify({ ...demo, carryingRange: { low: 30, high: 20 } });
    shelf.addFile({ name: 'odd.json', text });
    expect(shelf.open.value).toBe(before);
    expect(shelf.notice.value?.problems).toEqual([
      {
        place: 'carryingRange.high',
        message: 'is 20, no more than the low end 30; it must be above it',
      },
    ]);
  });

  it('says once that the browser refuses, goes on, and says it again only after a success', async () => {
    let isFull = true;
    const memory = new MemoryStore();
    const store: ShopStore = Object.assign(new MemoryStore(), {
      write: (writing: Writing) =>
        isFull
          ? Promise.reject(new DOMException('no room', 'QuotaExceededError'))
          : memory.write(writing),
    });
    const shelf = shelfOn(store);
    const edit = async (name: string) => {
      shelf.open.value.session.edit(renameShop(name));
      await shelf.idle();
      return shelf.notice.value?.text;
    };
    expect(await edit('One')).toContain('no room left');
    shelf.dismiss();
    expect(await edit('Two')).toBeUndefined();
    isFull = false;
    await edit('Three');
    expect(names(shelfOn(memory, await memory.readAll()))).toEqual(['Three']);
    isFull = true;
    expect(await edit('Four')).toContain('no room left');
  });

  describe('on a store that comes late', () => {
    const nameOf = ({ document }: { readonly document: unknown }) =>
      (document as { name: string }).name;
    const begin = async () => {
      const memory = new MemoryStore();
      const late = new MemoryStore([recordOf('old', 1)]);
      const shelf = shelfOn(memory);
      const edit = (name: string) => shelf.open.value.session.edit(renameShop(name));
      const kept = async () => (await late.readAll()).map(nameOf);
      edit('Meanwhile');
      await shelf.idle();
      return { memory, late, shelf, edit, kept };
    };

    it('goes on there, with what was entered meanwhile and what is entered then', async () => {
      const { memory, late, shelf, edit, kept } = await begin();
      await memory.moveTo(late);
      expect(await kept()).toEqual([demo.name, 'Meanwhile']);
      edit('Then');
      await shelf.idle();
      expect(await kept()).toEqual([demo.name, 'Then']);
      expect(shelf.notice.value).toBeUndefined();
      edit('At the last moment');
      shelf.flush();
      expect(await kept()).toEqual([demo.name, 'At the last moment']);
      await shelf.idle();
      shelf.remove('id-1');
      await shelf.idle();
      expect(await kept()).toEqual([demo.name]);
    });

    it('loses nothing that is entered while it is being moved', async () => {
      const { memory, late, shelf, edit, kept } = await begin();
      const moved = memory.moveTo(late);
      edit('On the way');
      await Promise.all([moved, shelf.idle()]);
      expect(await kept()).toEqual([demo.name, 'On the way']);
    });

    it('sets aside, and says so, what another tab has written there since', async () => {
      const { memory, late, shelf, edit, kept } = await begin();
      await memory.moveTo(late);
      const there = (await late.read('id-1'))!;
      const other = { ...demo, name: 'By another tab' };
      await late.write({ record: { ...there, document: other }, versions: [] });
      edit('Here');
      await shelf.idle();
      expect(await kept()).toEqual([demo.name, 'Here']);
      expect((await late.versions('id-1')).map(nameOf)).toContain('By another tab');
      expect(shelf.notice.value?.text).toMatch(/was edited in two tabs at once/);
    });

    it('stays as it was where that store takes nothing, and goes on', async () => {
      const { memory, shelf, edit } = await begin();
      const full = Object.assign(new MemoryStore(), {
        write: () => Promise.reject(new DOMException('no room', 'QuotaExceededError')),
      });
      await expect(memory.moveTo(full)).rejects.toThrow('no room');
      edit('Still here');
      await shelf.idle();
      expect((await memory.readAll()).map(nameOf)).toEqual(['Still here']);
    });
  });

  it('says what stands again when newer words are gone, until the reader takes it away', () => {
    const shelf = shelfOn(new MemoryStore());
    shelf.say({ text: 'blocked' });
    shelf.stand({ text: 'open again' });
    expect(shelf.notice.value?.text).toBe('open again');
    shelf.add(demo);
    expect(shelf.notice.value?.text).toBe('open again');
    shelf.say({ text: 'newer' });
    expect(shelf.notice.value?.text).toBe('newer');
    shelf.dismiss();
    expect(shelf.notice.value?.text).toBe('open again');
    shelf.dismiss();
    expect(shelf.notice.value).toBeUndefined();
  });

  it('writes the last state of a run of edits, not each of them', async () => {
    const written: string[] = [];
    const memory = new MemoryStore();
    const store: ShopStore = Object.assign(new MemoryStore(), {
      write: async (writing: Writing) => {
        await Promise.resolve();
        written.push((writing.record.document as { name: string }).name);
        return memory.write(writing);
      },
    });
    const shelf = shelfOn(store);
    for (let i = 0; i < 50; i++) shelf.open.value.session.edit(renameShop(`Name ${i}`), 'name');
    shelf.settle();
    await shelf.idle();
    expect(written).toEqual(['Name 0', 'Name 49']);
    const versions = await memory.versions('id-1');
    expect(versions.map(({ document }) => document)).toEqual([demo]);
  });

  it('writes the end of a drag by itself, a quarter of a second later', async () => {
    const store = new MemoryStore();
    const shelf = shelfOn(store);
    for (const name of ['A', 'B', 'C']) shelf.open.value.session.edit(renameShop(name), 'name');
    await expect
      .poll(async () => (await store.readAll()).map(({ document }) => document))
      .toEqual([{ ...demo, name: 'C' }]);
  });

  it('flushes what waits, and what is being written unless something later waits, before the page goes', async () => {
    const stuck = new MemoryStore();
    const flushed: string[] = [];
    const store: ShopStore = Object.assign(stuck, {
      write: () => new Promise<never>(() => {}),
      writeAtOnce: (writings: readonly Writing[]) => {
        for (const { record } of writings) flushed.push((record.document as Shop).name);
      },
    });
    const shelf = shelfOn(store);
    shelf.open.value.session.edit(renameShop('Being written'));
    shelf.open.value.session.edit(renameShop('Waiting'));
    shelf.flush();
    expect(flushed).toEqual(['Waiting']);
  });

  it('sets aside what each edit replaces, and puts a version back, which undo takes back', async () => {
    const store = new MemoryStore();
    const shelf = shelfOn(store);
    const { session, id } = shelf.open.value;
    for (let i = 1; i <= 30; i++) session.edit(renameShop(`Name ${i}`));
    await shelf.idle();
    const versions = await shelf.versions(id);
    const versionNames = versions.map(({ document }) => (document as Shop).name);
    // Twenty, and the last of the earlier ones of that day.
    expect(versionNames.slice(0, 3)).toEqual(['Name 29', 'Name 28', 'Name 27']);
    expect(versionNames).toHaveLength(21);
    shelf.restore(id, versions[4]!);
    expect(session.shop.value.name).toBe('Name 25');
    session.undo();
    expect(session.shop.value.name).toBe('Name 30');
    await shelf.idle();
    expect((await shelf.versions(id))[0]?.document).toMatchObject({ name: 'Name 25' });
  });

  it('refuses a version that can’t be opened, in words', () => {
    const shelf = shelfOn(new MemoryStore());
    const before = shelf.open.value.session.shop.value;
    shelf.restore(shelf.open.value.id, { aside: 1, cause: 'edit', document: { format: 'odd' } });
    expect(shelf.notice.value?.problems).toHaveLength(1);
    expect(shelf.open.value.session.shop.value).toBe(before);
  });

  it('sets the form of an older version aside before the first edit is written over it', async () => {
    const old = recordOf('a', 1, { ...demo, version: 0.5 });
    const store = new MemoryStore([old]);
    const shelf = shelfOn(store, [old]);
    // It can’t be opened, so a version of it is what is restored.
    shelf.restore('a', { aside: 1, cause: 'edit', document: demo });
    await shelf.idle();
    expect(await store.versions('a')).toMatchObject([
      { cause: 'migration', document: old.document },
    ]);
  });
});
