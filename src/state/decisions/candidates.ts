// The collectors that are set side by side: that of the shop, the reader's own curves, and the
// examples. Whose a curve is goes with it, and no two have the same name.

import { candidateOf } from '../../shop/decisions/collectors.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { ShelvedCurve } from '../curve-shelf.ts';

/** Whose a curve is: that of the shop, one that the reader keeps, or an example. */
export type CurveOrigin = 'today' | 'own' | 'example';

/** One that may be chosen. */
export interface Candidate {
  /** Stays the same while the curve is renamed. */
  readonly key: string;
  /** No other has it: where two curves have one name, whose it is stands before it. */
  readonly name: string;
  readonly origin: CurveOrigin;
  readonly collector: Collector;
}

/** Whose a curve is, in a word or two. */
export const ORIGIN_WORDS: Readonly<Record<CurveOrigin, string>> = {
  today: 'today’s',
  own: 'yours',
  example: 'example, invented',
};

/** What stands before a name that another has too. */
const WHOSE: Readonly<Record<CurveOrigin, string>> = {
  today: 'today’s',
  own: 'your',
  example: 'example',
};

/**
 * All that may be chosen. Of curves that are the same in all that counts the first is there once.
 *
 * @param shop - the shop
 * @param own - curves that the reader keeps
 * @param examples - curves with invented points
 * @returns that of the shop, then the reader's own, then the examples
 */
export function candidatesFor(
  shop: Shop,
  own: readonly ShelvedCurve[],
  examples: readonly Curve[],
): readonly Candidate[] {
  const today = shop.collector;
  const all: readonly Offered[] = [
    { key: 'today', origin: 'today', curve: today.curve },
    ...own.map(({ id, curve }): Offered => ({ key: `own ${id}`, origin: 'own', curve })),
    ...examples.map(
      (curve): Offered => ({
        key: `example ${curve.id ?? curve.name}`,
        origin: 'example',
        curve,
      }),
    ),
  ];
  const seen = new Set<string>();
  const names = new Set<string>();
  return all.flatMap(({ key, origin, curve }): Candidate[] => {
    const content = contentOf(curve);
    if (seen.has(content)) return [];
    seen.add(content);
    const name = freeName(curve.name, origin, names);
    names.add(name);
    const collector = origin === 'today' ? today : candidateOf(shop, curve);
    return [{ key, name, origin, collector }];
  });
}

interface Offered {
  readonly key: string;
  readonly origin: CurveOrigin;
  readonly curve: Curve;
}

/** All of a curve that an answer shows but where it came from. */
function contentOf(curve: Curve): string {
  const { name, basis, includes, density, points, price, fit, power, efficiency, nameplate } =
    curve;
  return JSON.stringify([
    name,
    [basis.kind, basis.kind === 'tap' ? basis.diameter : 0],
    [includes.filter, includes.separator],
    density,
    points.map(({ flow, pressure, aside }) => [flow, pressure, aside]),
    [price?.amount, price?.currency],
    [fit, power, efficiency, nameplate],
  ]);
}

function freeName(name: string, origin: CurveOrigin, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  const whose = `${WHOSE[origin]} ${name}`;
  let free = whose;
  for (let count = 2; taken.has(free); count++) free = `${whose} (${count})`;
  return free;
}
