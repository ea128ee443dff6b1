// The motor's load in words, reckoned once a change is over: it balances every named state of the gates.

import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { motorLoad, motorSentence, worstMotorLoad } from '../../shop/motor-load.ts';
import type { Session } from '../../state/session.ts';
import { stillness } from '../stillness.ts';

/** What is said of the motor. */
export interface MotorWords {
  readonly text: string;
  /** Whether the motor is asked more than its nameplate, now or in the worst state. */
  readonly isOver: boolean;
}

export class MotorController implements ReactiveController {
  #words: MotorWords = { text: '', isOver: false };
  #saidOf: readonly unknown[] = [];
  #session: Session | undefined;
  readonly #host: ReactiveControllerHost;

  /** @param host - is drawn anew when there is something else to say */
  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    stillness.forget(this.#say);
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
      this.#session = session;
      stillness.afterChange(this.#say);
    }
    return this.#words;
  }

  readonly #say = (): void => {
    const session = this.#session;
    if (!session) return;
    const [shop, gates, units] = [session.shop.peek(), session.gates.peek(), session.units.peek()];
    this.#saidOf = [shop, gates, units];
    const model = session.model.peek();
    const now = motorLoad(shop, model, session.report.peek());
    const worst = worstMotorLoad(shop, model);
    const most = Math.max((now.kind === 'known' && now.load) || 0, worst?.motor.load ?? 0);
    this.#words = { text: motorSentence(now, worst, units), isOver: most > 1 };
    this.#host.requestUpdate();
  };
}
