// What the document takes from the tables must be in them: pipes, hoods, machines.

import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import { HOODS } from '../../duct/hood.ts';
import { findMachine, MACHINES } from '../machine-flow.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { didYouMean } from './nearest.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Pipes, hoods and machines that no table has.
 *
 * @param shop - a shop whose parts have the right shape
 * @returns a problem for each
 */
export function checkTables(shop: Shop): Problem[] {
  return [...checkPipes(shop), ...checkHoods(shop), ...checkMachines(shop)];
}

function checkPipes(shop: Shop): Problem[] {
  return shop.sections.flatMap(({ pipe }, i) => {
    if (pipe.kind === 'custom') return [];
    const family = PIPE_FAMILIES.find(({ id }) => id === pipe.family);
    if (family === undefined) {
      const ids = PIPE_FAMILIES.map(({ id }) => id);
      return [
        unknown(shop, ['sections', i, 'pipe', 'family'], 'family of pipes', pipe.family, ids),
      ];
    }
    const ids = family.sizes.map(({ id }) => id);
    if (ids.includes(pipe.size)) return [];
    return [unknown(shop, ['sections', i, 'pipe', 'size'], `size of ${family.id}`, pipe.size, ids)];
  });
}

function checkHoods(shop: Shop): Problem[] {
  const ids = HOODS.map(({ id }) => id);
  return shop.drops.flatMap(({ hood }, i) => {
    if (hood.kind !== 'table' || ids.includes(hood.id)) return [];
    return [unknown(shop, ['drops', i, 'hood', 'id'], 'hood', hood.id, ids)];
  });
}

function checkMachines(shop: Shop): Problem[] {
  const ids = MACHINES.map(({ id }) => id);
  return shop.drops.flatMap(({ machine }, i) => {
    if (machine === undefined || findMachine(machine) !== undefined) return [];
    return [unknown(shop, ['drops', i, 'machine'], 'machine', machine, ids)];
  });
}

function unknown(
  shop: Shop,
  path: readonly PropertyKey[],
  what: string,
  id: string,
  known: readonly string[],
): Problem {
  const hint = didYouMean(id, known) || `; known are ${known.join(', ')}`;
  return { place: placeOf(path, shop), message: `is "${id}", a ${what} not in the table${hint}` };
}
