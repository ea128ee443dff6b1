// The demo shop as the app opens it.
import heronLane from '../../../../src/shop/heron-lane.json' with { type: 'json' };
import { openShopDocument } from '../../../../src/shop/open-shop.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';

export function demoShop(): Shop {
  const opened = openShopDocument(heronLane);
  if (opened.kind === 'opened') return opened.shop;
  throw new Error('the demo is not in order');
}
