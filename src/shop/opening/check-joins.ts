// Where sections meet: at a wye each inlet says how it joins, elsewhere none does.

import type { Shop } from '../schema/shop-schema.ts';
import type { SectionTree } from '../section-tree.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Joins that are missing, stale or of two kinds at one wye, and transitions where a wye is.
 *
 * @param shop - a shop whose parts have the right shape
 * @param tree - its tree
 * @returns a problem for each
 */
export function checkJoins(shop: Shop, tree: SectionTree): Problem[] {
  return shop.sections.flatMap((section, i): Problem[] => {
    const into = tree.into[i] ?? -1;
    const inlets = into < 0 ? [i] : (tree.inlets[into] ?? []);
    const path = ['sections', i];
    if (inlets.length < 2) {
      if (section.join === undefined) return [];
      const message = `is given, but nothing else empties into "${section.into}": leave it out`;
      return [{ place: placeOf([...path, 'join'], shop), message }];
    }
    const problems: Problem[] = [];
    const [first] = inlets;
    const firstKind = first === undefined ? undefined : shop.sections[first]?.join?.kind;
    if (section.join === undefined) {
      const message =
        `is missing: ${inlets.length} sections empty into "${section.into}", so each must say ` +
        'how it joins, for example {"kind": "momentum", "angle": 45}';
      problems.push({ place: placeOf([...path, 'join'], shop), message });
    } else if (firstKind !== undefined && section.join.kind !== firstKind) {
      const message =
        `is "${section.join.kind}", but the first inlet of "${section.into}" is "${firstKind}"; ` +
        'all inlets of one wye must be of the same kind';
      problems.push({ place: placeOf([...path, 'join', 'kind'], shop), message });
    }
    if (section.transition !== undefined) {
      const message =
        `is given where ${inlets.length} sections join; the wye itself counts the change of ` +
        'diameter: leave it out';
      problems.push({ place: placeOf([...path, 'transition'], shop), message });
    }
    return problems;
  });
}
