// The demo, opened, for tests of what is shown.
import demo from '../../../src/shop/heron-lane.json' with { type: 'json' };
import { openShopDocument } from '../../../src/shop/open-shop.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';

export function demoShop(): Shop {
  const opened = openShopDocument(demo);
  if (opened.kind === 'refused') throw new Error(JSON.stringify(opened.problems));
  return opened.shop;
}
