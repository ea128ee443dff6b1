import { describe, expect, it } from 'vitest';
import { deflated } from '../../../../src/shop/link/deflate.ts';
import { openShop } from '../../../../src/shop/open-shop.ts';
import { isShopLink, openShopLink, shopLink } from '../../../../src/shop/link/shop-link.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { branchedShop } from '../../../setup/branched-shop.ts';
import { longShop } from '../../../setup/long-shop.ts';
import { say } from '../../../setup/say.ts';
import { sixtySections } from '../../../setup/sixty-sections.ts';
import { demoShop } from '../../state/demo-shop.ts';
import { smallShop } from '../small-shop.ts';

const PAGE = 'https://workshop-pages.example/dropcurve/';
const hashOf = (address: string) => address.slice(PAGE.length);

async function linkOf(shop: Shop) {
  const link = await shopLink(shop, PAGE);
  if (link.kind !== 'link') throw new Error(`no link: ${JSON.stringify(link)}`);
  return link;
}
const problemsOf = async (hash: string) => {
  const opened = await openShopLink(hash);
  return opened.kind === 'refused' ? opened.problems : [];
};

describe('a link', () => {
  it.each([
    ['a small shop', smallShop],
    ['a trunk of 59 sections', longShop(30)],
    ['a branched shop', branchedShop(5, 6)],
    ['sixty sections as people enter them', sixtySections(1)],
    [
      'a name with markup, and what looks like numbers',
      {
        ...smallShop,
        name: '<img src=x onerror=alert(1)>',
        note: "12\n=3\t'\\",
      },
    ],
  ])('carries %s unchanged', async (_, shop) => {
    const { address, leftOut } = await linkOf(shop);
    expect(leftOut).toBe('nothing');
    expect(isShopLink(hashOf(address))).toBe(true);
    expect(await openShopLink(hashOf(address))).toEqual({ kind: 'opened', shop });
  });

  it('of sixty sections stays under 2,000 characters', async () => {
    const lengths: number[] = [];
    for (let seed = 1; seed <= 20; seed++) {
      const shop = sixtySections(seed);
      expect(openShop(JSON.stringify(shop)).kind, `seed ${seed}`).toBe('opened');
      expect(shop.sections).toHaveLength(60);
      lengths.push((await linkOf(shop)).address.length);
    }
    say(`links of sixty sections: ${Math.min(...lengths)} to ${Math.max(...lengths)} characters`);
    expect(Math.max(...lengths)).toBeLessThan(2000);
  });

  it('leaves the notes out, and says so, where they alone make it too long', async () => {
    const note = Array.from({ length: 900 }, (_, i) => `${(i * 7919) % 1009}`).join(' ');
    const { leftOut, address } = await linkOf({ ...demoShop(), note });
    expect(leftOut).toBe('notes');
    const opened = await openShopLink(hashOf(address));
    expect(opened.kind === 'opened' && opened.shop.note).toBeUndefined();
    expect(opened.kind === 'opened' && opened.shop.sections).toEqual(demoShop().sections);
  });

  it('is none where the shop is too large', async () => {
    expect(await shopLink(longShop(600), PAGE)).toMatchObject({ kind: 'too long' });
  });

  it('is none where it would not carry the shop unchanged', async () => {
    expect(await shopLink({ ...smallShop, note: 'a\u0001b' }, PAGE)).toEqual({
      kind: 'impossible',
    });
  });

  it('that is cut off, changed, or of a version to come is refused in words', async () => {
    const hash = hashOf((await linkOf(smallShop)).address);
    for (const bad of [
      hash.slice(0, -20),
      hash.slice(0, 12),
      `${hash}!!`,
      hash.replace('=1.', '=1.A'),
    ]) {
      const [problem] = await problemsOf(bad);
      expect(problem, bad).toMatchObject({ place: 'the link' });
      expect(problem?.message.length).toBeGreaterThan(10);
    }
    const [newer] = await problemsOf(hash.replace('=1.', '=2.'));
    expect(newer?.message).toContain('newer version');
    expect(isShopLink('#gates')).toBe(false);
  });

  it('stops inflating at a megabyte', async () => {
    const bomb = await deflated('a'.repeat(50_000_000));
    expect(bomb.length).toBeLessThan(100_000);
    const [problem] = await problemsOf(`#shop=1.${bomb}`);
    expect(problem?.message).toContain('more than a megabyte');
  });

  it('holds no more parts than there are, and nothing reaches what objects have in common', async () => {
    const many = await deflated('i*\n900000000\na\n=1');
    expect((await problemsOf(`#shop=1.${many}`))[0]?.message).toContain('too many parts');
    const deep = await deflated('~__proto__~~polluted~\n1');
    expect(await problemsOf(`#shop=1.${deep}`)).not.toEqual([]);
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });
});
