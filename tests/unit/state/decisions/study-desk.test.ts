import { beforeEach, describe, expect, it, vi } from 'vitest';
import { mainFamily, suggestedMain } from '../../../../src/shop/decisions/main-sections.ts';
import { mainSizeStudy } from '../../../../src/shop/decisions/main-sizes.ts';
import type { MainQuestion } from '../../../../src/state/decisions/question.ts';
import { StudyClient, type StudyEars } from '../../../../src/state/decisions/study-client.ts';
import { StudyDesk } from '../../../../src/state/decisions/study-desk.ts';
import type { FromWorker, ToWorker } from '../../../../src/state/decisions/study-messages.ts';
import { finish, type Progress } from '../../../../src/study/progress.ts';
import { demoShop } from '../demo-shop.ts';

const shop = demoShop();
const sections = suggestedMain(shop);
const question: MainQuestion = { shop, sections, family: mainFamily(shop, sections) };

/** A desk whose slices are done by hand; every step of a study takes a millisecond of its clock. */
class SlowDesk {
  readonly said: FromWorker[] = [];
  readonly waiting: (() => void)[] = [];
  #time = 0;
  readonly desk = new StudyDesk({
    now: () => this.#time++,
    later: (goOn) => this.waiting.push(goOn),
    pause: (goOn) => this.waiting.push(goOn),
    post: (message) => this.said.push(message),
  });

  slice(): void {
    this.waiting.shift()?.();
  }

  run(): void {
    while (this.waiting.length > 0) this.slice();
  }
}

describe('a desk that answers by slices', () => {
  it('gives the very answer of the study, after telling how far it is', () => {
    const slow = new SlowDesk();
    slow.desk.hear({ kind: 'ask', number: 7, subject: 'main', question });
    slow.run();
    const { rows, ...rest } = finish(mainSizeStudy(shop, sections, question.family));
    // In pieces, the rows before the rest.
    const pieces = slow.said.flatMap((each) => (each.kind === 'rows' ? [each.rows] : []));
    expect(pieces.length).toBeGreaterThan(1);
    expect(pieces.flat()).toEqual(rows);
    expect(slow.said.at(-1)).toEqual({ kind: 'answer', number: 7, answer: { ...rest, rows: [] } });
    const parts = slow.said.flatMap((each) =>
      each.kind === 'progress' ? [each.progress.done / each.progress.total] : [],
    );
    expect(parts.length).toBeGreaterThan(3);
    expect(parts).toEqual(parts.toSorted((a, b) => a - b));
    expect(parts.at(-1)).toBeLessThanOrEqual(1);
  });

  it('leaves off between two slices, and says nothing of it any more', () => {
    const slow = new SlowDesk();
    slow.desk.hear({ kind: 'ask', number: 1, subject: 'main', question });
    slow.slice();
    slow.desk.hear({ kind: 'cancel', number: 1 });
    slow.run();
    expect(slow.said.at(-1)).toEqual({ kind: 'cancelled', number: 1 });
    expect(slow.said.some(({ kind }) => kind === 'answer')).toBe(false);
  });

  it('leaves off between two pieces of an answer', () => {
    const slow = new SlowDesk();
    slow.desk.hear({ kind: 'ask', number: 1, subject: 'main', question });
    while (slow.said.at(-1)?.kind !== 'rows') slow.slice();
    slow.desk.hear({ kind: 'cancel', number: 1 });
    slow.run();
    expect(slow.said.at(-1)).toEqual({ kind: 'cancelled', number: 1 });
    expect(slow.said.filter(({ kind }) => kind === 'rows')).toHaveLength(1);
  });

  it('takes a new question in the place of the old', () => {
    const slow = new SlowDesk();
    slow.desk.hear({ kind: 'ask', number: 1, subject: 'main', question });
    slow.slice();
    slow.desk.hear({ kind: 'ask', number: 2, subject: 'main', question });
    slow.run();
    const told = slow.said.filter(({ kind }) => kind === 'cancelled' || kind === 'answer');
    expect(told.map(({ number }) => number)).toEqual([1, 2]);
    expect(slow.said.every(({ kind, number }) => kind !== 'rows' || number === 2)).toBe(true);
    expect(slow.said.at(-1)).toMatchObject({ kind: 'answer', number: 2 });
  });

  it('says why a question can’t be answered', () => {
    const slow = new SlowDesk();
    const family = 'no-such-pipe';
    slow.desk.hear({ kind: 'ask', number: 3, subject: 'main', question: { ...question, family } });
    slow.run();
    expect(slow.said).toEqual([
      { kind: 'refused', number: 3, reason: 'no family of pipe is called no-such-pipe' },
    ]);
  });
});

describe('a client that asks a worker', () => {
  const slow: { now: SlowDesk | undefined; begun: number; ended: number; deaf: boolean } = {
    now: undefined,
    begun: 0,
    ended: 0,
    deaf: false,
  };
  let ears: StudyEars;
  const client = () =>
    new StudyClient((given) => {
      ears = given;
      const worker = new SlowDesk();
      slow.now = worker;
      slow.begun += 1;
      return {
        post: (message: ToWorker) => {
          if (!slow.deaf) worker.desk.hear(structuredClone(message));
        },
        end: () => {
          slow.ended += 1;
        },
      };
    });
  /** Lets the worker run to its end and hands over what it said, as copies. */
  const deliver = () => {
    slow.now!.run();
    for (const message of slow.now!.said.splice(0)) ears.message(structuredClone(message));
  };

  beforeEach(() => {
    Object.assign(slow, { now: undefined, begun: 0, ended: 0, deaf: false });
  });

  it('gets an answer that has come through copies whole, and hears how far it is', async () => {
    const told: Progress[] = [];
    const asked = client().ask('main', question, (progress) => told.push(progress));
    deliver();
    const outcome = await asked;
    expect(outcome).toEqual({
      kind: 'answer',
      answer: finish(mainSizeStudy(shop, sections, question.family)),
    });
    expect(told.length).toBeGreaterThan(3);
  });

  it('ends at once when cancelled, and uses the same worker again', async () => {
    const asking = client();
    const first = asking.ask('main', question, () => {});
    slow.now!.slice();
    asking.cancel();
    expect(await first).toEqual({ kind: 'cancelled' });
    const second = asking.ask('main', question, () => {});
    deliver();
    expect((await second).kind).toBe('answer');
    expect(slow.begun).toBe(1);
    expect(slow.ended).toBe(0);
  });

  it('ends a worker that doesn’t hear, and asks another one what was asked meanwhile', async () => {
    vi.useFakeTimers();
    const asking = client();
    const first = asking.ask('main', question, () => {});
    slow.deaf = true;
    const second = asking.ask('main', question, () => {});
    expect(await first).toEqual({ kind: 'cancelled' });
    slow.deaf = false;
    vi.advanceTimersByTime(1000);
    vi.useRealTimers();
    expect([slow.begun, slow.ended]).toEqual([2, 1]);
    deliver();
    expect((await second).kind).toBe('answer');
  });

  it('says so when the worker breaks down, and begins another one', async () => {
    const asking = client();
    const first = asking.ask('main', question, () => {});
    ears.broken('out of memory');
    expect(await first).toEqual({ kind: 'refused', reason: 'out of memory' });
    const second = asking.ask('main', question, () => {});
    deliver();
    expect((await second).kind).toBe('answer');
    expect(slow.begun).toBe(2);
  });
});
