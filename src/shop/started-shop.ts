// A shop to begin with: a collector, a main and one drop. Whatever else a shop has starts at the
// usual values, which are listed here and can all be changed later.

import { usualCarryingRange } from './carrying-range.ts';
import { freshId } from './edits/fresh-id.ts';
import { pipeNameOf } from './edits/name-drop.ts';
import type { ShopAir } from './schema/air-schema.ts';
import type { Curve } from './schema/curve-schema.ts';
import type { Drop, Hood } from './schema/drop-schema.ts';
import type { Pipe } from './schema/section-schema.ts';
import { SHOP_FORMAT, SHOP_VERSION, type Shop } from './schema/shop-schema.ts';

/** A run of one pipe: which, and its length [m]. */
export interface Run {
  readonly pipe: Pipe;
  readonly length: number;
}

/** What has to be said of a new shop. */
export interface ShopStart {
  readonly name: string;
  readonly curve: Curve;
  readonly main: Run;
  readonly drop: Run & {
    readonly name: string;
    /** Id of a machine of the table, or undefined for none of them. */
    readonly machine: Drop['machine'];
  };
}

/** The air of a new shop: sea level, 20 °C, half damp (common practice, no source). */
export const USUAL_AIR: Extract<ShopAir, { readonly kind: 'room' }> = {
  kind: 'room',
  altitude: 0,
  temperature: 20,
  humidity: 0.5,
};

/** The hood of a new drop. */
export const USUAL_HOOD: Hood = { kind: 'table', id: 'plain-end' };

/**
 * The document of a new shop: the drop's pipe leads into the main, the main into the collector, both
 * without bends. The hood is a plain end with a gate that is drawn right out; neither filter nor
 * separator is taken off beyond what the curve's points hold.
 *
 * @param start - collector, main and drop
 * @returns the shop, in order as long as the lengths and pipes are
 */
export function startedShop({ name, curve, main, drop }: ShopStart): Shop {
  const dropId = freshId(drop.name, []);
  const ownId = freshId(drop.name, ['main']);
  return {
    format: SHOP_FORMAT,
    version: SHOP_VERSION,
    units: 'SI',
    name,
    air: USUAL_AIR,
    collector: { curve, filter: { kind: 'none' }, separator: { kind: 'none' } },
    carryingRange: usualCarryingRange(),
    sections: [
      { id: 'main', name: 'main', into: 'collector', ...main, fittings: [] },
      {
        id: ownId,
        name: pipeNameOf(drop.name),
        into: 'main',
        pipe: drop.pipe,
        length: drop.length,
        fittings: [],
      },
    ],
    drops: [
      {
        id: dropId,
        name: drop.name,
        into: ownId,
        hood: USUAL_HOOD,
        gate: { travel: 1 },
        ...(drop.machine === undefined ? {} : { machine: drop.machine }),
      },
    ],
    gateSets: [],
  };
}
