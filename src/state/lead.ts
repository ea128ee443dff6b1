// Whether this tab is the one that writes the open shop. Other tabs that show it follow, and are asked
// to hand it over when it is edited here. A tab that closes or crashes hands over by that.

import type { ShopTabs, TabPlace } from '../shop/store/tab-message.ts';

/** What is told of the lead. */
export interface LeadEars {
  readonly gained: () => void;
  readonly lost: () => void;
  /** The tab that leads does not answer. */
  readonly unanswered: () => void;
}

/** Asks again this often, and gives up waiting for an answer after so many times. */
const ASK = { pace: 150, most: 10 };

export class Lead {
  readonly #tabs: ShopTabs | undefined;
  readonly #id: string;
  readonly #ears: LeadEars;
  readonly #place: TabPlace | undefined;
  #leads = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param tabs - the other tabs; without, this one leads
   * @param id - of the shop
   * @param ears - are told what becomes of the lead
   */
  constructor(tabs: ShopTabs | undefined, id: string, ears: LeadEars) {
    this.#tabs = tabs;
    this.#id = id;
    this.#ears = ears;
    this.#leads = tabs === undefined;
    this.#place = tabs?.queue(id, {
      leads: () => this.#onTurn(),
      lost: () => {
        this.#leads = false;
        ears.lost();
      },
    });
  }

  /** Whether this tab may write. */
  get leads(): boolean {
    return this.#leads;
  }

  /** Asks for the lead until this tab has it. */
  ask(): void {
    if (this.#leads || this.#timer !== undefined) return;
    this.#askAgain(0);
  }

  /** Lets another tab lead. */
  handOver(): void {
    this.#leads = false;
    this.#ears.lost();
    this.#place?.handOver();
  }

  /** Leads at once, whether the other tab answers or not. */
  takeOver(): void {
    this.#place?.takeOver();
  }

  /** Leaves the shop to others. */
  leave(): void {
    this.#stopAsking();
    this.#leads = false;
    this.#ears.lost();
    this.#place?.leave();
  }

  #onTurn(): void {
    this.#stopAsking();
    this.#leads = true;
    this.#ears.gained();
  }

  #askAgain(times: number): void {
    if (times === ASK.most) this.#ears.unanswered();
    this.#tabs?.send({ kind: 'ask', id: this.#id });
    this.#timer = setTimeout(() => this.#askAgain(times + 1), ASK.pace);
  }

  #stopAsking(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }
}
