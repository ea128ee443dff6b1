// One shop being looked at: its document with undo, the gate positions being tried, the units, and
// everything that follows from them, computed when it is read and only if what it reads has changed.
//
// Gate positions come twice: where the gates are to stand, and where they are shown on the way there.
// Words and verdicts follow the first, pictures and numbers the second; at rest they are the same.
// (A little over 200 lines: the gates have to follow the document in every way in which it changes.)

import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { ShopEdit } from '../shop/edits/change.ts';
import { tryEdit } from '../shop/edits/try-edit.ts';
import type { Problem } from '../shop/opening/problem.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { sentence } from '../shop/sentence.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import { type StateReport, stateReport } from '../shop/state-report.ts';
import type { UnitSystem } from '../units/quantity.ts';
import {
  followDrops,
  type GatePositions,
  newcomersShut,
  positionsWhenOpen,
  travelsOf,
  withGate,
} from './gate-positions.ts';
import { History } from './history.ts';
import { type ChangeKind, LastChange, type Settled } from './last-change.ts';
import { hasPart, type Part } from './selected-part.ts';
import { shopModel } from './shop-model-signal.ts';
import { addTried, type Tried, triedState } from './trail.ts';
import { withNames } from './with-names.ts';

export class Session {
  readonly history: History<Shop>;
  readonly shop: ReadonlySignal<Shop>;
  readonly units: Signal<UnitSystem>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** The section or drop that is looked at; undefined where none is, or where it was taken out. */
  readonly selection: ReadonlySignal<Part | undefined>;

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
  /** The state before the last change; while gates move, the one they started from. */
  readonly former: ReadonlySignal<Settled | undefined>;

  readonly #gates: Signal<GatePositions>;
  readonly #shownGates: Signal<GatePositions>;
  readonly #tried: Signal<readonly Tried[]>;
  readonly #selected: Signal<Part | undefined>;
  readonly #lastChange: LastChange;

  /**
   * @param shop - the shop to begin with
   * @param open - ids of the drops whose gates are open at first
   * @param units - the units to begin with
   */
  constructor(shop: Shop, open: readonly string[], units: UnitSystem) {
    this.history = new History(shop);
    this.shop = this.history.present;
    this.units = signal(units);
    this.canUndo = this.history.canUndo;
    this.canRedo = this.history.canRedo;
    this.#selected = signal(undefined);
    this.selection = computed(() => {
      const part = this.#selected.value;
      return part && hasPart(this.shop.value, part) ? part : undefined;
    });
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
    this.#lastChange = new LastChange({ shop, report: this.report.peek() });
    this.former = computed(() => {
      const { before, now } = this.#lastChange;
      return now.value.report === this.report.value ? before.value : now.value;
    });
    this.rest();
  }

  /**
   * Makes an edit, if the shop is in order afterwards.
   *
   * @param edit - from the document to the next
   * @param mergeKey - edits that follow one another with the same key are undone as one
   * @returns what would be wrong with the shop, and then nothing was edited; else nothing
   */
  edit(edit: ShopEdit, mergeKey?: string): readonly Problem[] {
    const before = this.shop.peek();
    const tried = tryEdit(before, edit);
    if (tried.kind === 'refused') return tried.problems;
    this.#change(() => {
      this.#moveBoth((positions) => newcomersShut(positions, before.drops, tried.shop.drops));
      this.history.commit(() => tried.shop, mergeKey);
    });
    return [];
  }

  /** Takes the last edit back; nothing happens where there is none. */
  undo(): void {
    this.#change(() => this.history.undo());
  }

  /** Makes the edit again that was taken back last. */
  redo(): void {
    this.#change(() => this.history.redo());
  }

  /** Looks at one section or drop, or at none. */
  select(part: Part | undefined): void {
    const now = this.#selected.peek();
    if (now?.kind !== part?.kind || now?.id !== part?.id) this.#selected.value = part;
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

  /** The gates have come to rest: their state goes on the trail, and the one before is kept. */
  rest(kind: ChangeKind = 'anew'): void {
    const shop = this.shop.peek();
    const report = this.report.peek();
    const state = triedState(shop, this.model.peek(), report);
    batch(() => {
      if (state) this.#tried.value = addTried(this.#tried.peek(), state);
      this.#lastChange.settle({ shop, report }, kind);
    });
  }

  /** Forgets the state before the last change. */
  dismissFormer(): void {
    this.#lastChange.dismiss();
  }

  /** Forgets the states tried, but for the present one. */
  clearTrail(): void {
    this.#tried.value = [];
    this.rest();
  }

  /** Changes the document and lets the gates follow its drops; whoever reads hears of it once. */
  #change(change: () => void): void {
    const before = this.shop.peek();
    const undoLed = this.history.previous.peek();
    batch(() => {
      change();
      const { drops } = this.shop.peek();
      this.#moveBoth((positions) => followDrops(positions, before.drops, drops));
      const isAtRest = this.#shownGates.peek() === this.#gates.peek();
      if (!isAtRest || this.shop.peek() === before) return;
      this.rest(this.history.previous.peek() === undoLed ? 'goes on' : 'anew');
    });
  }

  /** Moves the gates, and those shown, without putting apart what was one. */
  #moveBoth(move: (positions: GatePositions) => GatePositions): void {
    const isAtRest = this.#shownGates.peek() === this.#gates.peek();
    this.#gates.value = move(this.#gates.peek());
    this.#shownGates.value = isAtRest ? this.#gates.peek() : move(this.#shownGates.peek());
  }
}
