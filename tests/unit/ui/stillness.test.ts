// The clock and the timers are the test's own.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stillness } from '../../../src/ui/stillness.ts';

describe('stillness', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('is told once after the last change, to each after the rest that it waits for', async () => {
    const [usual, patient] = [vi.fn(), vi.fn()];
    for (let change = 0; change < 20; change++) {
      stillness.afterChange(usual);
      stillness.afterChange(patient, 300);
      await vi.advanceTimersByTimeAsync(16);
    }
    await vi.advanceTimersByTimeAsync(130);
    expect(usual).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(10);
    expect(usual).toHaveBeenCalledOnce();
    await vi.advanceTimersByTimeAsync(140);
    expect(patient).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(10);
    expect(patient).toHaveBeenCalledOnce();
    await vi.advanceTimersByTimeAsync(1000);
    expect([usual, patient].map(({ mock }) => mock.calls.length)).toEqual([1, 1]);
  });

  it('waits on for a change that somebody else has noted', async () => {
    const call = vi.fn();
    stillness.afterChange(call);
    await vi.advanceTimersByTimeAsync(100);
    stillness.noteChange();
    await vi.advanceTimersByTimeAsync(140);
    expect(call).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(20);
    expect(call).toHaveBeenCalledOnce();
  });

  it('is not told to one who no longer waits, though only since another was told', async () => {
    const late = vi.fn();
    stillness.afterChange(() => stillness.forget(late));
    stillness.afterChange(late);
    await vi.advanceTimersByTimeAsync(1000);
    expect(late).not.toHaveBeenCalled();
  });
});
