// Opens the page on the demo, the Heron Lane paddle works, already solved.

import demo from '../shop/heron-lane.json' with { type: 'json' };
import { openShopDocument } from '../shop/open-shop.ts';
import { Session } from '../state/session.ts';
import '../ui/shop-page/shop-page.ts';
import { usualUnits } from './usual-units.ts';

const opened = openShopDocument(demo);
if (opened.kind === 'refused') {
  throw new RangeError(`the demo is refused: ${JSON.stringify(opened.problems)}`);
}
const { shop } = opened;
const firstOpen = shop.gateSets[0]?.open ?? shop.drops.slice(0, 1).map(({ id }) => id);

document.title = `${shop.name} · Dropcurve`;
const page = document.createElement('dc-shop-page');
page.session = new Session(shop, firstOpen, usualUnits(navigator.language));
document.body.append(page);
