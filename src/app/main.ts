// Opens the page: on the shop that was worked on last, or on the demo, the Heron Lane paddle works.

import { follow } from '../state/follow.ts';
import '../ui/shop-desk/shop-desk.ts';
import { askToPersist, keepAll } from './keep-all.ts';
import { keepUnits, keptUnits } from './kept-units.ts';
import { openShelf } from './open-shelf.ts';
import { takeLinks } from './take-links.ts';
import { usualUnits } from './usual-units.ts';

const { shelf, kept } = await openShelf(keptUnits() ?? usualUnits(navigator.language));
follow(
  () => shelf.units.value,
  (units) => keepUnits(units),
);

keepAll(shelf);
if (kept) askToPersist(shelf);

void takeLinks(shelf);

const desk = document.createElement('dc-shop-desk');
desk.shelf = shelf;
desk.kept = kept;
document.body.append(desk);

// Once the page has come to rest: it must not wait for what it may need another time.
if (import.meta.env.PROD && import.meta.env.MODE !== 'single') {
  const begin = () => void import('./offline.ts').then(({ keepOffline }) => keepOffline(shelf));
  if (document.readyState === 'complete') begin();
  else addEventListener('load', begin);
}
