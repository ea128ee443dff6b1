// The sections form one tree: each empties into another or into the collector, one of them into the
// collector, and none into itself by whatever way round.

import { COLLECTOR_ID } from '../collector-id.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { AT_FLANGE, NOWHERE, type SectionTree } from '../section-tree.ts';
import { didYouMean } from './nearest.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Where the sections fail to form one tree.
 *
 * @param shop - a shop whose parts have the right shape
 * @param tree - its tree
 * @returns a problem for each section that is at fault
 */
export function checkTree(shop: Shop, tree: SectionTree): Problem[] {
  return [...checkInto(shop, tree), ...checkRoots(shop, tree), ...checkLoops(shop, tree)];
}

function checkInto(shop: Shop, tree: SectionTree): Problem[] {
  const known = [COLLECTOR_ID, ...tree.position.keys()];
  return shop.sections.flatMap((section, i) => {
    const place = placeOf(['sections', i, 'into'], shop);
    if (section.into === section.id) {
      return [{ place, message: 'names the section itself; a section empties into another one' }];
    }
    if (tree.into[i] !== NOWHERE) return [];
    const isDrop = shop.drops.some((drop) => drop.id === section.into);
    const why = isDrop ? 'a drop, not a section' : 'no section has that id';
    return [
      { place, message: `names "${section.into}": ${why}${didYouMean(section.into, known)}` },
    ];
  });
}

function checkRoots(shop: Shop, tree: SectionTree): Problem[] {
  const roots = shop.sections.filter((_, i) => tree.into[i] === AT_FLANGE);
  if (roots.length === 0) {
    const message = `none empties into "${COLLECTOR_ID}"; exactly one section must`;
    return [{ place: 'sections', message }];
  }
  return roots.slice(1).map((root) => ({
    place: placeOf(['sections', shop.sections.indexOf(root), 'into'], shop),
    message:
      `is "${COLLECTOR_ID}", but section "${roots[0]?.id}" empties into the collector already; ` +
      'lead both into a section that does',
  }));
}

/** Sections on a ring, and those that only lead into one: neither reaches the collector. */
function checkLoops(shop: Shop, tree: SectionTree): Problem[] {
  const rings = new Map<number, ReadonlySet<number>>();
  return shop.sections.flatMap((_, i) => {
    const ring = ringAhead(tree, i, rings);
    if (ring === undefined || ring.size === 1) return [];
    const round = [...ring].slice(0, 6).map((at) => `"${shop.sections[at]?.id}"`);
    const shown = [...round, ring.size > 6 ? '…' : undefined, round[0]].filter(Boolean).join(' → ');
    const message = ring.has(i)
      ? `leads round in a ring, ${shown}; no air gets out of it`
      : `leads into a ring, ${shown}, and never reaches the collector`;
    return [{ place: placeOf(['sections', i, 'into'], shop), message }];
  });
}

/** The ring that a section is on or leads into; what is found is noted for all that was passed. */
function ringAhead(
  tree: SectionTree,
  start: number,
  rings: Map<number, ReadonlySet<number>>,
): ReadonlySet<number> | undefined {
  const passed = new Set<number>();
  let at = start;
  while (at >= 0 && !rings.has(at) && !passed.has(at)) {
    passed.add(at);
    at = tree.into[at] ?? NOWHERE;
  }
  const way = [...passed];
  const ring = passed.has(at) ? new Set(way.slice(way.indexOf(at))) : (rings.get(at) ?? new Set());
  for (const each of way) rings.set(each, ring);
  return ring.size === 0 ? undefined : ring;
}
