// Tabs of one browser that lie side by side in a test: messages and turns arrive in an order drawn
// by chance, each tab's own messages in the order in which they were sent.
import type { ShopTabs, TabMessage, TabTurn } from '../../src/shop/store/tab-message.ts';

interface Holder {
  readonly tab: number;
  readonly turn: TabTurn;
}

export class FakeBrowser {
  readonly #ears: ((message: TabMessage) => void)[] = [];
  readonly #queues = new Map<string, Holder[]>();
  /** One line of deliveries for each pair of tabs, and one for the turns. */
  readonly #lines = new Map<string, (() => void)[]>();

  /** A tab that opens. */
  tab(): ShopTabs {
    const own = this.#ears.length;
    this.#ears.push(() => {});
    return {
      send: (message) => {
        // As the browser does, a message arrives as a copy.
        const copy = structuredClone(message);
        for (const other of this.#ears.keys()) {
          if (other !== own) this.#post(`${own}-${other}`, () => this.#ears[other]?.(copy));
        }
      },
      listen: (take) => {
        this.#ears[own] = take;
      },
      queue: (id, turn) => {
        const holder = { tab: own, turn };
        const queue = this.#queues.get(id) ?? [];
        this.#queues.set(id, queue);
        const enter = () => {
          queue.push(holder);
          if (queue.length === 1) this.#give(queue);
        };
        const leave = () => {
          const place = queue.indexOf(holder);
          if (place === -1) return;
          queue.splice(place, 1);
          if (place === 0 && queue.length > 0) this.#give(queue);
        };
        enter();
        return {
          leave,
          handOver: () => {
            leave();
            enter();
          },
          takeOver: () => {
            const [former] = queue;
            leave();
            queue.unshift(holder);
            former?.turn.lost();
            this.#give(queue);
          },
        };
      },
    };
  }

  /** Delivers one thing that is under way, if any. */
  deliver(chance: () => number): boolean {
    const lines = [...this.#lines.values()].filter((line) => line.length > 0);
    const line = lines[Math.floor(chance() * lines.length)];
    line?.shift()?.();
    return line !== undefined;
  }

  #give(queue: Holder[]): void {
    const [first] = queue;
    this.#post('turns', () => {
      if (first && queue[0] === first) first.turn.leads();
    });
  }

  #post(line: string, act: () => void): void {
    const acts = this.#lines.get(line) ?? [];
    acts.push(act);
    this.#lines.set(line, acts);
  }
}
