import { describe, it } from 'vitest';
import { forgetFrame, inOwnFrame } from '../../src/ui/one-a-frame.ts';
import { expect } from './harness.ts';

const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));

describe('the queue of what is drawn piece by piece', () => {
  it('calls one in a frame, in the order of asking, and each once however often asked', async () => {
    const called: string[] = [];
    const first = () => called.push('first');
    const second = () => called.push('second');
    inOwnFrame(first);
    inOwnFrame(second);
    inOwnFrame(first);
    const counts: number[] = [];
    for (let i = 0; i < 4; i++) {
      await frame();
      counts.push(called.length);
    }
    expect(called).toEqual(['first', 'second']);
    expect(counts).toEqual([1, 2, 2, 2]);
  });

  it('takes turns between those that ask again', async () => {
    const called: string[] = [];
    const again = (name: string) => {
      const call = () => {
        called.push(name);
        if (called.length < 6) inOwnFrame(call);
      };
      return call;
    };
    inOwnFrame(again('a'));
    inOwnFrame(again('b'));
    await expect.poll(() => called.join('')).toMatch(/^ababab/);
  });

  it('does not call what was forgotten, and goes on with the rest', async () => {
    const called: string[] = [];
    const dropped = () => called.push('dropped');
    inOwnFrame(dropped);
    inOwnFrame(() => called.push('kept'));
    forgetFrame(dropped);
    await expect.poll(() => called).toEqual(['kept']);
  });
});
