// That a hand is followed at each move with ease, and at every third where the processor has trouble,
// with the frames of the others for what is drawn; and that its last move is never lost.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { effort } from '../../../src/ui/effort.ts';
import { HandMoves } from '../../../src/ui/hand-moves.ts';
import { AFTER_THE_HAND, rhythmOf, type Turn, Turns } from '../../../src/ui/turns.ts';

const TURNS: readonly Turn[] = [0, 1, 2, 3, 4, 5, 6];
const MOVES = Array.from({ length: 42 }, (_, move) => move + 1);
/** After that the hand rests [ms]. */
const REST = 400;

function makeChangesTake(time: number): void {
  for (let i = 0; i < 100; i++) effort.measure(() => vi.advanceTimersByTime(time));
}

/** What happened in the frame of each move, the first left out, in which all is drawn. */
function framesOf(moves: readonly number[]) {
  let frame: string[] = [];
  const readers = [
    { name: 'plot', rhythm: AFTER_THE_HAND },
    ...TURNS.map((turn) => ({ name: `turn ${turn}`, rhythm: rhythmOf(turn) })),
  ].map(({ name, rhythm }) => ({ name, turns: new Turns(rhythm, () => frame.push(name)) }));
  const hand = new HandMoves<number>(() => {
    frame.push('made');
    for (const { name, turns } of readers) if (turns.isTurn()) frame.push(name);
  });
  const frames = moves.map((move) => {
    frame = [];
    hand.take(move);
    return frame;
  });
  hand.drop();
  for (const { turns } of readers) turns.forget();
  return frames.slice(1);
}

describe('a hand that moves something', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(async () => {
    makeChangesTake(0);
    // The page's one clock of rest is to look at nothing any more.
    await vi.advanceTimersByTimeAsync(REST);
    vi.useRealTimers();
  });

  it('is followed at each move with ease', () => {
    makeChangesTake(0);
    const made: number[] = [];
    const hand = new HandMoves<number>((move) => made.push(move));
    for (const move of MOVES) hand.take(move);
    expect(made).toEqual(MOVES);
    expect(framesOf(MOVES).every((frame) => frame[0] === 'made' && frame[1] === 'plot')).toBe(true);
    hand.drop();
  });

  it('is followed at every third move with trouble, and no frame pays for two things', () => {
    makeChangesTake(2);
    const frames = framesOf(MOVES);
    expect(frames.map((frame) => frame.length)).toEqual(frames.map(() => 1));
    const kinds = frames.flat().map((what) => what.replace(/ \d/, ''));
    expect(kinds.slice(0, 6)).toEqual(['plot', 'turn', 'made', 'plot', 'turn', 'made']);
    for (const turn of TURNS) {
      expect(frames.flat().filter((what) => what === `turn ${turn}`)).toHaveLength(2);
    }
  });

  it('has its last move made where it lets go, once', async () => {
    makeChangesTake(2);
    const made: number[] = [];
    const hand = new HandMoves<number>((move) => made.push(move));
    for (const move of [1, 2, 3]) hand.take(move);
    expect(made).toEqual([1]);
    expect(hand.kept).toBe(3);
    hand.letGo();
    expect(made).toEqual([1, 3]);
    expect(hand.kept).toBeUndefined();
    await vi.advanceTimersByTimeAsync(REST);
    hand.letGo();
    expect(made).toEqual([1, 3]);
  });

  it('has its last move made where it rests, and not where it is dropped', async () => {
    makeChangesTake(2);
    const made: number[] = [];
    const hand = new HandMoves<number>((move) => made.push(move));
    for (const move of [1, 2]) hand.take(move);
    await vi.advanceTimersByTimeAsync(REST);
    expect(made).toEqual([1, 2]);
    for (const move of [3, 4]) hand.take(move);
    hand.drop();
    await vi.advanceTimersByTimeAsync(REST);
    expect(made).toEqual([1, 2, 3]);
  });
});
