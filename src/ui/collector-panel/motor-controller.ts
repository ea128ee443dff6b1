// The motor's load in words, reckoned once a change is over: it balances every named state of the gates.

import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { motorLoad, motorWords } from '../../state/collector/motor-load.ts';
import type { Session } from '../../state/session.ts';

/** What is said of the motor. */
export type MotorWords = ReturnType<typeof motorWords>;

/** How long nothing must have changed [ms]. */
const REST = 120;

export class MotorController implements ReactiveController {
  #words: MotorWords = { text: '', isOver: false };
  #saidOf: readonly unknown[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  readonly #host: ReactiveControllerHost;

  /** @param host - is drawn anew when there is something else to say */
  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  /**
   * What was said last. Where something has changed since, it is reckoned anew after a rest.
   *
   * @param session - the session
   * @returns words of the motor's load
   */
  wordsFor(session: Session): MotorWords {
    const now = [session.shop.peek(), session.gates.peek(), session.units.peek()];
    if (now.some((each, i) => each !== this.#saidOf[i])) {
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => this.#say(session), REST);
    }
    return this.#words;
  }

  #say(session: Session): void {
    const [shop, gates, units] = [session.shop.peek(), session.gates.peek(), session.units.peek()];
    this.#saidOf = [shop, gates, units];
    const load = motorLoad(shop, session.model.peek(), gates);
    this.#words = motorWords(load, shop.collector.curve.nameplate, units);
    this.#host.requestUpdate();
  }
}
