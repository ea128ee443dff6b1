// That no frame pays for two kinds of what is drawn where the processor has trouble, and which share
// one where it has not.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { effort } from '../../../src/ui/effort.ts';
import { AS_IT_CAN, IN_STEP, type Rhythm, rhythmOf, type Turn } from '../../../src/ui/turns.ts';

const TURNS: readonly Turn[] = [0, 1, 2, 3, 4, 5, 6];
const CHANGES = Array.from({ length: 42 }, (_, change) => change);

/** By the clock of the test, which nothing else on the machine delays [ms]. */
let clock = 0;
function makeChangesTake(time: number): void {
  for (let i = 0; i < 100; i++) {
    effort.measure(() => {
      clock += time;
    });
  }
}

const isDrawnAt = (rhythm: Rhythm, change: number) => {
  const { every, at } = rhythm();
  return change % every === at;
};
const changesOf = (rhythm: Rhythm) => CHANGES.filter((change) => isDrawnAt(rhythm, change));

describe('what is drawn at a change', () => {
  beforeEach(() => {
    vi.spyOn(performance, 'now').mockImplementation(() => clock);
  });
  afterEach(() => {
    makeChangesTake(0);
    vi.restoreAllMocks();
  });

  it('is the picture at each, and beside it marks or one turn of figures, with ease', () => {
    makeChangesTake(0);
    expect(changesOf(AS_IT_CAN)).toEqual(CHANGES);
    for (const change of CHANGES) {
      const kinds = [IN_STEP, ...TURNS.map(rhythmOf)].filter((kind) => isDrawnAt(kind, change));
      expect(kinds.length, `change ${change}`).toBe(1);
    }
    for (const turn of TURNS) expect(changesOf(rhythmOf(turn)).length).toBe(3);
  });

  it('is the picture, marks or one turn of figures, each alone, with trouble', () => {
    makeChangesTake(2);
    for (const change of CHANGES) {
      const all = [AS_IT_CAN, IN_STEP, ...TURNS.map(rhythmOf)];
      expect(all.filter((kind) => isDrawnAt(kind, change)).length, `change ${change}`).toBe(1);
    }
    for (const turn of TURNS) expect(changesOf(rhythmOf(turn)).length).toBe(2);
  });

  it('keeps its rhythm until changes take half as long', () => {
    makeChangesTake(2);
    makeChangesTake(0.75);
    expect(AS_IT_CAN().every).toBe(3);
    makeChangesTake(0);
    expect(AS_IT_CAN().every).toBe(1);
    makeChangesTake(0.75);
    expect(AS_IT_CAN().every).toBe(1);
  });
});
