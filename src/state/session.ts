// One shop being looked at: its document with undo, the gate positions being tried, the units, and
// everything that follows from them, computed when it is read and only if what it reads has changed.
//
// Gate positions come twice: where the gates are to stand, and where they are shown on the way there.
// Words and verdicts follow the first, pictures and numbers the second; at rest they are the same.

import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { Air } from '../air/air.ts';
import { type CollectorCurve, collectorCurve } from '../curve/collector-curve.ts';
import { networkOf, type ShopNetwork } from '../shop/network-of.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { sentence } from '../shop/sentence.ts';
import { airOf } from '../shop/shop-air.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import { type StateReport, stateReport } from '../shop/state-report.ts';
import { createWorkspace } from '../solve/workspace.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { type GatePositions, positionsWhenOpen, travelsOf, withGate } from './gate-positions.ts';
import { History } from './history.ts';
import { collectorText, ductsText } from './physical-part.ts';
import { withNames } from './with-names.ts';
import { addTried, type Tried, triedState } from './trail.ts';

export class Session {
  readonly history: History<Shop>;
  readonly shop: ReadonlySignal<Shop>;
  readonly units: Signal<UnitSystem>;

  /** Where the gates are to stand. */
  readonly gates: ReadonlySignal<GatePositions>;
  /** Where the gates are shown: the same, or somewhere on the way there. */
  readonly shownGates: ReadonlySignal<GatePositions>;

  readonly model: ReadonlySignal<ShopModel>;
  /** What the solver says of the gates where they are to stand. */
  readonly report: ReadonlySignal<StateReport>;
  /** What the solver says of the gates where they are shown. */
  readonly shownReport: ReadonlySignal<StateReport>;
  readonly sentence: ReadonlySignal<string>;
  /** States tried with the present ducts and collector, the latest last. */
  readonly trail: ReadonlySignal<readonly Tried[]>;

  readonly #gates: Signal<GatePositions>;
  readonly #shownGates: Signal<GatePositions>;
  readonly #tried: Signal<readonly Tried[]>;

  /**
   * @param shop - the shop to begin with
   * @param open - ids of the drops whose gates are open at first
   * @param units - the units to begin with
   */
  constructor(shop: Shop, open: readonly string[], units: UnitSystem) {
    this.history = new History(shop);
    this.shop = this.history.present;
    this.units = signal(units);
    const gates = positionsWhenOpen(shop.drops, open);
    this.#gates = signal(gates);
    this.#shownGates = signal(gates);
    this.#tried = signal([]);
    this.gates = computed(() => this.#gates.value);
    this.shownGates = computed(() => this.#shownGates.value);

    this.model = shopModel(this.shop);
    const reportOn = (at: GatePositions) =>
      stateReport(this.model.value, travelsOf(this.model.value.ducts.drops, at));
    const solved = computed(() => reportOn(this.#gates.value));
    const shown = computed(() =>
      this.#shownGates.value === this.#gates.value
        ? solved.value
        : reportOn(this.#shownGates.value),
    );
    this.report = computed(() => withNames(solved.value, this.shop.value));
    this.shownReport = computed(() =>
      shown.value === solved.value ? this.report.value : withNames(shown.value, this.shop.value),
    );
    this.sentence = computed(() => sentence(this.shop.value, this.report.value, this.units.value));
    this.trail = computed(() =>
      this.#tried.value.filter(({ model }) => model === this.model.value),
    );
    this.rest();
  }

  /** Says where the gates are to stand. The gates are shown there at once or by `showGates`. */
  moveGates(positions: GatePositions): void {
    this.#gates.value = positions;
  }

  /** Shows the gates somewhere on the way to where they are to stand. */
  showGates(positions: GatePositions): void {
    this.#shownGates.value = positions;
  }

  /** Moves one gate under the hand: it is shown where it is. */
  dragGate(id: string, travel: number): void {
    batch(() => {
      this.#gates.value = withGate(this.#gates.peek(), id, travel);
      this.#shownGates.value = this.#gates.peek();
    });
  }

  /** Opens just these drops and shuts all others. */
  openOnly(open: readonly string[]): void {
    this.moveGates(positionsWhenOpen(this.shop.peek().drops, open));
  }

  /** The gates have come to rest: their state goes on the trail. */
  rest(): void {
    const state = triedState(this.shop.peek(), this.model.peek(), this.report.peek());
    if (state) this.#tried.value = addTried(this.#tried.peek(), state);
  }
}

/** Air, collector and ducts, each computed anew only when its own part of the document changes. */
function shopModel(shop: ReadonlySignal<Shop>): ReadonlySignal<ShopModel> {
  const airPart = computed(() => shop.value.air);
  const air: ReadonlySignal<Air> = computed(() => airOf(airPart.value));
  const collectorPart = computed(() => collectorText(shop.value));
  const curve: ReadonlySignal<CollectorCurve> = computed(() => {
    void collectorPart.value;
    return collectorCurve(shop.peek().collector, air.value);
  });
  const ductsPart = computed(() => ductsText(shop.value));
  const ducts: ReadonlySignal<ShopNetwork> = computed(() => {
    void ductsPart.value;
    return networkOf(shop.peek(), air.value);
  });
  const carryingRange = computed(() => shop.value.carryingRange);
  return computed(() => ({
    air: air.value,
    curve: curve.value,
    ducts: ducts.value,
    carryingRange: carryingRange.value,
    sectionIds: shop.peek().sections.map(({ id }) => id),
    work: createWorkspace(ducts.value.network),
  }));
}
