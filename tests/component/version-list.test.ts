import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import type { ShopVersion } from '../../src/shop/store/shop-store.ts';
import type { VersionList } from '../../src/ui/version-list/version-list.ts';
import '../../src/ui/version-list/version-list.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const demo = demoShop();
const versions: readonly ShopVersion[] = [
  { aside: Date.UTC(2026, 4, 2, 12), cause: 'edit', document: { ...demo, name: 'Before' } },
  {
    aside: Date.UTC(2026, 4, 1, 12),
    cause: 'edit',
    document: { ...demo, name: 'Before', drops: demo.drops.slice(0, -1) },
  },
  { aside: Date.UTC(2026, 3, 1, 12), cause: 'other tab', document: demo },
];
const placeList = (find: () => Promise<readonly ShopVersion[]>) =>
  place<VersionList>(
    html`<dc-version-list shop="a" .now=${demo} .versions=${find}></dc-version-list>`,
  );

describe('the list of earlier versions', () => {
  it('is accessible and says in what each differs from the next', async () => {
    const list = await placeList(async () => versions);
    await expectAccessible(list);
    const rows = page.getByRole('listitem').elements();
    expect(rows).toHaveLength(3);
    expect(rows[0]?.textContent).toContain('another name');
    expect(rows[0]?.textContent).not.toContain('drop');
    expect(rows[1]?.textContent).toMatch(/1 drop fewer|can’t be opened/);
    expect(rows[2]?.textContent).toContain('from another tab');
  });

  it('asks for the version that is chosen', async () => {
    const list = await placeList(async () => versions);
    const wishes = heard(list, 'dc-shelf');
    await button(/^Go back to this: (2 May|May 2)/).click();
    await button(/^Save as a file: (2 May|May 2)/).click();
    expect(wishes.map(({ wish }) => wish)).toEqual([
      { kind: 'restore', id: 'a', version: versions[0] },
      { kind: 'download version', version: versions[0] },
    ]);
  });

  it('says so where there is none, and where they can’t be read', async () => {
    await placeList(async () => []);
    expect(text(/^None yet/).elements()).toHaveLength(1);
    await placeList(() => Promise.reject(new Error('no room')));
    await expect.poll(() => text(/can’t be read now. \(no room\)/).elements().length).toBe(1);
  });
});
