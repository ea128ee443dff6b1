// What the losses of a shop's ducts consist of, so that hoods, fittings and walls can be doubted apart.

import { findPipe } from '../../duct/catalogue.ts';
import type { DoubtfulLayout, DoubtfulParts } from '../../study/doubted-network.ts';
import { pipeWord } from '../pipe-of.ts';
import type { Pipe } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { sectionParts } from '../section-parts.ts';
import type { ShopModel } from '../shop-model.ts';

/** Of a roughness that somebody entered nobody says how sure it is: half to double is gone through. */
const ENTERED_RANGE = [0.5, 2] as const;

/**
 * The network of a shop with the parts of its losses.
 *
 * @param shop - a shop in order
 * @param model - the same, ready to be balanced
 * @returns the network and its parts, in the network's order
 */
export function doubtfulLayout(shop: Shop, model: ShopModel): DoubtfulLayout {
  const { ducts, air } = model;
  const { network, sections, tree } = ducts;
  const column = () => new Float64Array(network.count);
  const parts: DoubtfulParts = {
    hood: column(),
    fitting: column(),
    fittingFrictional: column(),
    wall: column(),
    smoothest: column(),
    usual: column(),
    roughest: column(),
    isHose: new Uint8Array(network.count),
  };
  network.order.forEach((at, place) => {
    const section = shop.sections[at]!;
    const { pipe, change } = sections[at]!;
    const drop = shop.drops[tree.drops[at]?.[0] ?? -1];
    parts.fitting[place] = change;
    for (const { part, coefficient } of sectionParts(section, drop, pipe.diameter, air.density)) {
      const { fixed, frictional } = coefficient;
      if (part.kind === 'hood') parts.hood[place]! += fixed;
      else if (part.kind === 'pipe' || part.kind === 'hose') parts.wall[place]! += frictional;
      else {
        parts.fitting[place] += fixed;
        parts.fittingFrictional[place]! += frictional;
      }
    }
    const [low, high] = roughnessRange(section.pipe, pipe.roughness);
    parts.smoothest[place] = low / pipe.diameter;
    parts.usual[place] = pipe.roughness / pipe.diameter;
    parts.roughest[place] = high / pipe.diameter;
    parts.isHose[place] = pipeWord(section.pipe) === 'hose' ? 1 : 0;
  });
  return { network, parts };
}

/**
 * The range of a wall's roughness: of the catalogue, or about an entered one.
 *
 * @param pipe - the pipe as the document states it
 * @param roughness - its roughness [m]
 * @returns smoothest and roughest [m]
 */
export function roughnessRange(pipe: Pipe, roughness: number): readonly [number, number] {
  if (pipe.kind === 'catalogue' && pipe.roughness === undefined) {
    const found = findPipe(pipe.family, pipe.size);
    if (found !== undefined) return found.roughnessRange;
  }
  return [ENTERED_RANGE[0] * roughness, ENTERED_RANGE[1] * roughness];
}
