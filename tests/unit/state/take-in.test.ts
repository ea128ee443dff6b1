// Archives and links, taken in by a shelf and given out by it.
import { describe, expect, it } from 'vitest';
import { archiveFiles } from '../../../src/shop/archive.ts';
import { isArchive } from '../../../src/shop/is-archive.ts';
import { MemoryStore } from '../../../src/shop/store/memory-store.ts';
import { Shelf } from '../../../src/state/shelf.ts';
import { shelvedName } from '../../../src/state/shelved.ts';
import { allInOneFile, linkNotice, takeArchive, takeLink } from '../../../src/state/take-in.ts';
import { longShop } from '../../setup/long-shop.ts';
import { smallShop } from '../shop/small-shop.ts';
import { demoShop } from './demo-shop.ts';

const demo = demoShop();
function freshShelf() {
  let count = 0;
  const next = () => ++count;
  return new Shelf({
    store: new MemoryStore(),
    records: [],
    demo,
    units: 'us',
    newId: () => `id-${next()}`,
    now: () => Date.UTC(2026, 4, 2) + next(),
  });
}
const names = (shelf: Shelf) => shelf.shops.value.map(shelvedName);

describe('an archive', () => {
  it('holds all shops, those that can’t be opened too, and gives them back', async () => {
    const shelf = freshShelf();
    shelf.add({ ...demo, name: 'One' }, { ...smallShop, name: 'Two' });
    await shelf.idle();
    const [file, ...others] = allInOneFile(shelf.shops.value, Date.UTC(2026, 4, 2));
    expect(others).toEqual([]);
    expect(file?.name).toBe('shops-2026-05-02.json');
    expect(isArchive(file?.text ?? '')).toBe(true);
    const later = freshShelf();
    takeArchive(later, file!);
    expect(names(later)).toEqual(['One', 'Two']);
    expect(later.open.value.session.shop.value).toEqual({ ...demo, name: 'One' });
    expect(later.notice.value?.text).toContain('2 of 2 shops were opened');
  });

  it('opens what can be opened and says of the rest what is wrong, and where', () => {
    const documents = [smallShop, { ...smallShop, units: 'US' }, { format: 'odd' }];
    const shelf = freshShelf();
    takeArchive(shelf, archiveFiles(documents, '2026-05-02')[0]!);
    expect(names(shelf)).toEqual([smallShop.name]);
    expect(shelf.notice.value?.text).toContain('1 of 3 shops');
    expect(shelf.notice.value?.problems?.map(({ place }) => place)).toEqual([
      'shops[1]: units',
      'shops[2]: format',
    ]);
  });

  it.each([
    ['{"format":"dropcurve-shops","version":2,"shops":[]}', 'newer version'],
    ['{"format":"dropcurve-shops","version":1}', 'a list of shops'],
    ['{"format":"dropcurve-shops","version":1,"shops":[}', 'not JSON here'],
  ])('is refused in words and leaves open what was open: %s', (text, words) => {
    const shelf = freshShelf();
    const before = shelf.open.value;
    takeArchive(shelf, { name: 'all.json', text });
    expect(shelf.open.value).toBe(before);
    expect(shelf.notice.value?.problems?.[0]?.message).toContain(words);
  });

  it('is parted where one file would be too long to be opened', () => {
    const large = { ...smallShop, note: 'x'.repeat(3_000_000) };
    const files = archiveFiles([large, large, smallShop], '2026-05-02');
    expect(files.map(({ name }) => name)).toEqual([
      'shops-2026-05-02-part-1.json',
      'shops-2026-05-02-part-2.json',
    ]);
    for (const { text } of files) expect(text.length).toBeLessThan(5_000_000);
  });
});

describe('a link', () => {
  const PAGE = 'https://workshop-pages.example/';

  it('is copied, and opened as a copy beside what is there', async () => {
    const shelf = freshShelf();
    let copied = '';
    const notice = await linkNotice(smallShop, 'a', PAGE, async (text) => {
      copied = text;
    });
    expect(notice.text).toContain(`${copied.length} characters`);
    shelf.add(demo);
    await takeLink(shelf, copied.slice(PAGE.length));
    expect(shelf.open.value.session.shop.value).toEqual(smallShop);
    expect(names(shelf)).toEqual([smallShop.name, demo.name]);
  });

  it('offers the file where it would be too long', async () => {
    const notice = await linkNotice(longShop(600), 'a', PAGE, async () => {});
    expect(notice.text).toContain('Send its file instead');
    expect(notice.save).toBe('a');
  });

  it('is shown where the browser does not let it be copied', async () => {
    const notice = await linkNotice(smallShop, 'a', PAGE, () => Promise.reject(new Error('no')));
    expect(notice.text).toContain(`${PAGE}#shop=1.`);
  });

  it('that is broken is refused in words and leaves open what was open', async () => {
    const shelf = freshShelf();
    const before = shelf.open.value;
    await takeLink(shelf, '#shop=1.AAAA');
    expect(shelf.open.value).toBe(before);
    expect(shelf.notice.value?.problems).toHaveLength(1);
  });
});
