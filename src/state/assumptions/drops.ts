// What is assumed of hoods, gates and what each machine needs.

import carrying from '../../../shared/carrying-ranges.json' with { type: 'json' };
import { USUAL_LEAK } from '../../duct/blast-gate.ts';
import { findHood } from '../../duct/hood.ts';
import { provenanceOf } from '../../duct/provenance.ts';
import { listed } from '../../shop/listed.ts';
import { findMachine } from '../../shop/machine-flow.ts';
import type { Drop } from '../../shop/schema/drop-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import { type Assumption, eachOnce, entered, sourced } from './assumption.ts';
import { LEAK_SOURCE } from './known-sources.ts';

/**
 * What is assumed of hoods and gates.
 *
 * @param drops - the drops of the shop
 * @param system - the units to speak in
 * @returns rows to show, each hood once
 */
export function assumedHoods(drops: readonly Drop[], system: UnitSystem): Assumption[] {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  const hoods = drops.map(({ hood, name }) => {
    if (hood.kind === 'coefficient') return sameHoods(drops, hood.coefficient);
    if (hood.kind === 'measured') {
      const reading = `${show('pressure', hood.suction)} at ${show('velocity', hood.velocity)}`;
      return entered(`Hood of ${name}, measured`, reading);
    }
    const found = findHood(hood.id);
    if (!found) return entered(`Hood of ${name}`, hood.id);
    return sourced(`Hood: ${found.name}`, `K ${found.coefficient}`, found.source);
  });
  const leaks = drops.flatMap(({ gate }) => (gate ? [gate.leak ?? USUAL_LEAK] : []));
  return [
    ...eachOnce(hoods),
    ...eachOnce(
      leaks.map((leak) =>
        leak === USUAL_LEAK
          ? sourced('A shut gate leaks', `${show('fraction', leak)} of its area`, LEAK_SOURCE)
          : entered('A shut gate leaks', `${show('fraction', leak)} of its area`),
      ),
    ),
    sourced('A gate partly open', 'by its open area', {
      citation: 'J. Weisbach, Die Experimental-Hydraulik, 1855; others differ by a factor of two',
      status: 'from memory, unverified',
    }),
  ];
}

/** All hoods of one coefficient in one row. */
function sameHoods(drops: readonly Drop[], coefficient: number): Assumption {
  const names = drops.flatMap(({ name, hood }) =>
    hood.kind === 'coefficient' && hood.coefficient === coefficient ? [name] : [],
  );
  const isAll = names.length > 1 && names.length === drops.length;
  const what = names.length === 1 ? `Hood of ${names[0]}` : `Hoods of ${listed(names)}`;
  return entered(isAll ? 'Every hood' : what, `K ${coefficient}`);
}

/**
 * What the answer is judged by: the carrying range, and what each machine needs.
 *
 * @param shop - the shop
 * @param system - the units to speak in
 * @returns rows to show
 */
export function assumedNeeds(
  shop: Pick<Shop, 'drops' | 'carryingRange'>,
  system: UnitSystem,
): Assumption[] {
  const { low, high } = shop.carryingRange;
  const ends = [formatQuantity('velocity', system, low), formatQuantity('velocity', system, high)];
  const range = `${ends[0]?.number} to ${ends[1]?.text}`;
  const usual = carrying.rows.find((row) => row.low === low && row.high === high);
  const needs = shop.drops.flatMap(({ name, need, machine }) => {
    if (need !== undefined) return [entered(name, formatQuantity('flow', system, need).text)];
    const found = machine === undefined ? undefined : findMachine(machine);
    if (!found) return [];
    return [
      sourced(
        `${name}: ${found.name}`,
        formatQuantity('flow', system, found.flow).text,
        found.source,
      ),
    ];
  });
  return [
    usual
      ? sourced('Chips carry at', range, provenanceOf(usual, carrying.sources))
      : entered('Chips carry at', range),
    ...needs,
  ];
}
