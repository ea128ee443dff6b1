// That no frame pays for two kinds of what is drawn where the processor has trouble, and which share
// one where it has not.
import { afterEach, describe, expect, it } from 'vitest';
import { AS_IT_CAN, IN_STEP, type Rhythm, rhythmOf, type Turn } from '../../../src/ui/turns.ts';
import { makeChangesTake } from '../../component/slow-processor.ts';

const TURNS: readonly Turn[] = [0, 1, 2, 3, 4, 5, 6];
const CHANGES = Array.from({ length: 42 }, (_, change) => change);

const isDrawnAt = (rhythm: Rhythm, change: number) => {
  const { every, at } = rhythm();
  return change % every === at;
};
const changesOf = (rhythm: Rhythm) => CHANGES.filter((change) => isDrawnAt(rhythm, change));

describe('what is drawn at a change', () => {
  afterEach(() => makeChangesTake(0));

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
