// Which parts of a layout need solving in every state of a study, and which are tabulated once. A
// branch that is the same in all layouts is tabulated for each setting of its own gates, if it is met
// with each setting often enough to be worth it; all else is solved by Newton steps, state by state.

import type { CollectorCurve } from '../curve/collector-curve.ts';
import type { Network } from '../solve/network.ts';
import { hasSharedHeads } from './characteristic.ts';

/** Every layout with every setting of the gates on every collector. */
export interface StatesQuestion {
  /** Networks of one form: the same sections in the same places, which may differ in pipe. */
  readonly layouts: readonly Network[];
  /** Gates of each state: loss coefficients in the network's order [-], each of shape (sections). */
  readonly gates: readonly Float64Array[];
  readonly curves: readonly CollectorCurve[];
}

/** How a study goes about its states. Sections are places in the network's order. */
export interface StatePlan {
  /** Sections that are solved in every state, the one at the flange first. */
  readonly solved: Int32Array;
  /** 1 where a section is tabulated, with everything upstream of it. */
  readonly isTabulated: Uint8Array;
  /** Of each section: which setting its own gates have in each state [-], shape (states). */
  readonly settings: readonly Int32Array[];
  /** Of each section: a state that shows each of its settings [-], shape (settings). */
  readonly examples: readonly Int32Array[];
}

/** A table takes about as long as this many Newton solves of a section. */
const WORTH = 200;

/**
 * Plans the states of a study.
 * @param question - layouts, gates and collectors
 * @returns what is solved and what is tabulated
 * @throws RangeError when there is no layout, or the layouts differ in form
 */
export function planStates(question: StatesQuestion): StatePlan {
  const { layouts, gates, curves } = question;
  const [network] = layouts;
  if (network === undefined) throw new RangeError('no layout is given');
  if (layouts.some((other) => !sameForm(network, other))) {
    throw new RangeError('the layouts differ in form');
  }
  const { count, firstInlet, endInlet } = network;
  const settings: Int32Array[] = [];
  const examples: Int32Array[] = [];
  const isTabulated = new Uint8Array(count);
  const same = sameInAll(layouts);
  const uses = layouts.length * gates.length * curves.length;
  const isShared = layouts.every(hasSharedHeads);
  for (let i = count - 1; i >= 0; i--) {
    const inlets = Array.from(
      { length: endInlet[i]! - firstInlet[i]! },
      (_, k) => firstInlet[i]! + k,
    );
    const key = (state: number): string =>
      inlets.length === 0
        ? String(gates[state]![i])
        : inlets.map((inlet) => settings[inlet]![state]).join();
    const numbers = new Map<string, number>();
    const first: number[] = [];
    settings[i] = Int32Array.from(gates.keys(), (state) => {
      const name = key(state);
      const known = numbers.get(name);
      if (known !== undefined) return known;
      numbers.set(name, first.length);
      first.push(state);
      return first.length - 1;
    });
    examples[i] = Int32Array.from(first);
    const isWorth = isShared && i > 0 && same[i] === 1 && uses >= WORTH * first.length;
    if (isWorth && inlets.every((inlet) => isTabulated[inlet] === 1)) isTabulated[i] = 1;
  }
  const solved = Int32Array.from([...isTabulated.keys()].filter((i) => isTabulated[i] === 0));
  return { solved, isTabulated, settings, examples };
}

function sameForm(network: Network, other: Network): boolean {
  return (
    network.count === other.count &&
    network.parent.every((parent, i) => parent === other.parent[i]) &&
    network.order.every((input, i) => input === other.order[i])
  );
}

/** 1 where what a section draws at a head is the same in every layout: it and all upstream of it. */
function sameInAll(layouts: readonly Network[]): Uint8Array {
  const [network, ...others] = layouts;
  const { count, parent } = network!;
  const isAlike = (
    columns: readonly (typeof OWN_COLUMNS | typeof JOIN_COLUMNS)[number][],
    i: number,
  ) => others.every((other) => columns.every((column) => other[column][i] === network![column][i]));
  const same = Uint8Array.from({ length: count }, (_, i) => (isAlike(OWN_COLUMNS, i) ? 1 : 0));
  for (let i = count - 1; i > 0; i--) {
    if (same[i] === 0 || !isAlike(JOIN_COLUMNS, i)) same[parent[i]!] = 0;
  }
  return same;
}

/** What a section's own table follows from, and what the wye that it empties into takes of it. */
const OWN_COLUMNS = [
  'dynamic',
  'reynolds',
  'frictional',
  'fixed',
  'own',
  'relativeRoughness',
] as const;
const JOIN_COLUMNS = ['cross', 'combined'] as const;
