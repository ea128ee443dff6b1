// What the form of a new shop holds before anything is typed: common sizes, all of which show and can
// be changed.

import { STANDARD_DENSITY } from '../../air/velocity-pressure.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { CURVE_FORMAT, CURVE_VERSION } from '../../shop/schema/curve-schema.ts';
import type { Pipe } from '../../shop/schema/section-schema.ts';
import type { ShopStart } from '../../shop/started-shop.ts';
import { fromDisplay, type UnitSystem } from '../../units/quantity.ts';

/** A curve whose points are still to be typed. */
export const EMPTY_CURVE: Curve = {
  format: CURVE_FORMAT,
  version: CURVE_VERSION,
  units: 'SI',
  name: 'My collector',
  basis: { kind: 'fan-static' },
  includes: { filter: false, separator: false },
  density: STANDARD_DENSITY,
  points: [],
};

/**
 * The form as it opens.
 *
 * @param curve - the example to begin with
 * @param units - the reader's units; sizes and lengths are round in them
 * @returns what the form holds
 */
export function firstFigures(curve: Curve, units: UnitSystem): ShopStart {
  const length = (us: number, metric: number) =>
    fromDisplay('length', units, units === 'us' ? us : metric);
  const pipe = (us: string, metric: string): Pipe => ({
    kind: 'catalogue',
    family: 'galvanised-spiral',
    size: units === 'us' ? us : metric,
  });
  return {
    name: 'My shop',
    curve,
    main: { pipe: pipe('6in', '150mm'), length: length(20, 6) },
    drop: {
      name: 'Table saw',
      machine: 'table-saw',
      pipe: pipe('5in', '125mm'),
      length: length(6, 2),
    },
  };
}
