// A network with everything a little off: fittings, walls, wyes, gates and the collector's curve.

import type { CollectorCurve } from '../curve/collector-curve.ts';
import { frictionTable } from '../solve/friction-table.ts';
import type { Network } from '../solve/network.ts';
import type { DoubtFactors } from './doubt-factors.ts';

/** What the losses of a network's sections consist of; arrays of shape (sections) in its order. */
export interface DoubtfulParts {
  /** Entry losses of hoods [-] */
  readonly hood: Float64Array;
  /** What of the losses is of fittings and changes of diameter, without and with friction [-] */
  readonly fitting: Float64Array;
  readonly fittingFrictional: Float64Array;
  /** What multiplies the friction factor along the wall alone [-] */
  readonly wall: Float64Array;
  /** Smoothest, usual and roughest wall over the inside diameter [-] */
  readonly smoothest: Float64Array;
  readonly usual: Float64Array;
  readonly roughest: Float64Array;
  /** 1 for a hose */
  readonly isHose: Uint8Array;
}

/** A layout with what its losses consist of. */
export interface DoubtfulLayout {
  readonly network: Network;
  readonly parts: DoubtfulParts;
}

/** Layouts of one form, and the kinds of wall that they are made of. */
export interface DoubtfulLayouts {
  readonly layouts: readonly DoubtfulLayout[];
  /** One section of each kind of wall: which layout [-] and which place [-]. */
  readonly kinds: readonly (readonly [layout: number, section: number])[];
  /** Of each layout: which kind each section is of [-], shape (sections). */
  readonly kindOf: readonly Int32Array[];
}

/**
 * Sorts the walls of layouts by kind, since most of them are the same.
 * @param layouts - networks with their parts
 * @returns the layouts with their kinds of wall
 */
export function doubtfulLayouts(layouts: readonly DoubtfulLayout[]): DoubtfulLayouts {
  const kinds: [number, number][] = [];
  const known = new Map<string, number>();
  const kindOf = layouts.map(({ parts }, layout) =>
    Int32Array.from(parts.usual, (usual, i) => {
      const name = [parts.smoothest[i], usual, parts.roughest[i], parts.isHose[i]].join();
      const kind = known.get(name) ?? kinds.length;
      if (kind === kinds.length) {
        kinds.push([layout, i]);
        known.set(name, kind);
      }
      return kind;
    }),
  );
  return { layouts, kinds, kindOf };
}

/**
 * Layouts with everything a little off. They share one table of friction.
 * @param doubtful - networks with their parts and kinds of wall
 * @param factors - by what everything is off
 * @returns one network a layout, of the same form
 */
export function doubtedLayouts(
  { layouts, kinds, kindOf }: DoubtfulLayouts,
  factors: DoubtFactors,
): readonly Network[] {
  const walls = Float64Array.from(kinds, ([layout, i]) =>
    wallOf(layouts[layout]!.parts, factors, i),
  );
  const law = layouts[0]?.network.friction.law;
  if (law === undefined) return [];
  const table = frictionTable(law, walls);
  return layouts.map(({ network, parts }, layout) => {
    const kind = kindOf[layout]!;
    const frictional = parts.wall.map(
      (wall, i) => wall + factors.fittings * parts.fittingFrictional[i]!,
    );
    const byWye = (column: Float64Array) => column.map((value) => factors.wyes * value);
    return {
      ...network,
      frictional,
      laminar: frictional.map(
        (multiple, i) => (64 * multiple * network.dynamic[i]!) / network.reynolds[i]!,
      ),
      fixed: parts.hood.map(
        (hood, i) => factors.hoods * hood + factors.fittings * parts.fitting[i]!,
      ),
      own: byWye(network.own),
      combined: byWye(network.combined),
      cross: byWye(network.cross),
      shared: byWye(network.shared),
      excess: byWye(network.excess),
      relativeRoughness: Float64Array.from(kind, (each) => walls[each]!),
      friction: { ...table, row: kind.map((each) => table.row[each]!) },
    };
  });
}

function wallOf(parts: DoubtfulParts, factors: DoubtFactors, i: number): number {
  const [low, usual, high] = [parts.smoothest[i]!, parts.usual[i]!, parts.roughest[i]!];
  const place = parts.isHose[i] === 1 ? factors.hoseWall : factors.pipeWall;
  return usual + factors.walls * (low + place * (high - low) - usual);
}

/**
 * Gates that lose more or less.
 * @param gates - loss coefficients [-], shape (sections)
 * @param factors - by what everything is off
 * @returns coefficients [-], shape (sections)
 */
export function doubtedGates(gates: Float64Array, factors: DoubtFactors): Float64Array {
  return gates.map((value) => factors.gates * value);
}

/**
 * A collector whose entered pressures are off; its filter, its separator and a tap's velocity pressure
 * stay as they are.
 * @param curve - the collector
 * @param factors - by what everything is off
 * @returns the collector
 */
export function doubtedCurve(curve: CollectorCurve, factors: DoubtFactors): CollectorCurve {
  return { ...curve, pressureScale: factors.curve * curve.pressureScale };
}
