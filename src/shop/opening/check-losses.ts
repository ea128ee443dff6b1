// Numbers that are fine by themselves but not together: a reading of a hood that can't be, a wall
// too rough for its pipe, a transition where none can be.

import { hoodLoss } from '../hood-loss.ts';
import { pipeNumbers } from '../pipe-of.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { AT_FLANGE, type SectionTree } from '../section-tree.ts';
import { airOf } from '../shop-air.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/** The friction laws hold up to this roughness over inside diameter [-]. */
const ROUGHEST = 0.1;

/**
 * Combinations of numbers that no duct can have.
 *
 * @param shop - a shop whose parts have the right shape
 * @param tree - its tree
 * @returns a problem for each
 */
export function checkLosses(shop: Shop, tree: SectionTree): Problem[] {
  return [...checkWalls(shop), ...checkReadings(shop), ...checkFlange(shop, tree)];
}

function checkWalls(shop: Shop): Problem[] {
  return shop.sections.flatMap(({ pipe }, i) => {
    const numbers = pipeNumbers(pipe);
    if (numbers === undefined || numbers.roughness <= ROUGHEST * numbers.diameter) return [];
    const most = ROUGHEST * numbers.diameter;
    const message =
      `is ${numbers.roughness}, more than a tenth of the inside diameter; ` +
      `it must be at most ${Number(most.toPrecision(3))} [m] here`;
    return [{ place: placeOf(['sections', i, 'pipe', 'roughness'], shop), message }];
  });
}

function checkReadings(shop: Shop): Problem[] {
  const { density } = airOf(shop.air);
  return shop.drops.flatMap(({ hood }, i) => {
    const loss = hoodLoss(hood, density);
    if (hood.kind !== 'measured' || loss.kind !== 'below velocity pressure') return [];
    const message =
      `is ${hood.suction} [Pa], less than the velocity pressure at ${hood.velocity} m/s ` +
      `(${loss.velocityPressure.toFixed(0)} Pa); one of the two readings is wrong`;
    return [{ place: placeOf(['drops', i, 'hood', 'suction'], shop), message }];
  });
}

function checkFlange(shop: Shop, tree: SectionTree): Problem[] {
  return shop.sections.flatMap((section, i) => {
    if (tree.into[i] !== AT_FLANGE || section.transition === undefined) return [];
    const message =
      'is given on the section at the collector, whose inlet has no diameter here; ' +
      'state a change of diameter there as a plain fitting';
    return [{ place: placeOf(['sections', i, 'transition'], shop), message }];
  });
}
