// The state before the last change, kept until it is dismissed: what the drops did before the last
// edit, or before the gates last came to rest.

import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { Shop } from '../shop/schema/shop-schema.ts';
import type { DropReport, StateReport } from '../shop/state-report.ts';

/** A shop with what the solver said of it. */
export interface Settled {
  readonly shop: Shop;
  readonly report: StateReport;
}

/** Whether a change stands by itself, or goes on with the one before, as the keys of one number do. */
export type ChangeKind = 'anew' | 'goes on';

/** Two figures that differ less, in parts of the larger, were only reached by different ways [-]. */
const SAME = 1e-6;

/** Remembers one state. */
export class LastChange {
  /** The state before the last change; undefined where there was none, or it was dismissed. */
  readonly before: ReadonlySignal<Settled | undefined>;
  /** The state that things last came to rest in. */
  readonly now: ReadonlySignal<Settled>;

  readonly #before: Signal<Settled | undefined>;
  readonly #now: Signal<Settled>;

  /** @param start - the state to begin with */
  constructor(start: Settled) {
    this.#before = signal(undefined);
    this.#now = signal(start);
    this.before = computed(() => this.#before.value);
    this.now = computed(() => this.#now.value);
  }

  /** Things have come to rest. A state with the same figures is no change. */
  settle(state: Settled, kind: ChangeKind): void {
    const former = this.#now.peek();
    const starts = kind === 'anew' || this.#before.peek() === undefined;
    if (starts && !isSame(former, state)) this.#before.value = former;
    this.#now.value = state;
  }

  /** Forgets the former state. */
  dismiss(): void {
    this.#before.value = undefined;
  }
}

function isSame(a: Settled, b: Settled): boolean {
  const { drops } = b.report;
  return (
    a.shop.carryingRange === b.shop.carryingRange &&
    a.report.drops.length === drops.length &&
    a.report.drops.every((drop, i) => isSameDrop(drop, drops[i]!))
  );
}

function isSameDrop(a: DropReport, b: DropReport): boolean {
  return (
    a.id === b.id &&
    a.travel === b.travel &&
    isNear(a.velocity, b.velocity) &&
    isNear(a.slowest.velocity, b.slowest.velocity)
  );
}

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
}
