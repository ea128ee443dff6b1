// What is laborious to draw takes turns while one change follows another: the first change is drawn, then
// one in so many, and the last. What moves is drawn at every second or third change, and what is to be read
// has changes between, each in its turn: that is as often as it can be read.

import { effort } from './effort.ts';
import { stillness } from './stillness.ts';

/** What is laborious has a frame to itself. */
export type Turn = 0 | 1 | 2 | 3 | 4 | 5 | 6;

/** At which of the changes that follow one another something is drawn. */
export interface Beat {
  /** From one to the next of them. */
  readonly every: number;
  /** The first of them, 0 being the first change of all. */
  readonly at: number;
}

/** What is drawn when, on a processor that follows with ease or on one that has trouble to. */
export type Rhythm = () => Beat;

/** How many turns there are. */
const TURNS = 7;

/** Marks that go along with what moves. */
export const IN_STEP = rhythm({ every: 2, at: 0 }, { every: 3, at: 1 });
/** A picture, where all else leaves no time for it at every change. */
export const AS_IT_CAN = rhythm({ every: 1, at: 0 }, { every: 3, at: 0 });
/** A picture whose parts the hand moves itself: where there is trouble, the frame after a move is its own. */
export const AFTER_THE_HAND = rhythm({ every: 1, at: 0 }, { every: 3, at: 1 });

/** The rhythm of figures that have a turn. */
export function rhythmOf(turn: Turn): Rhythm {
  return rhythm({ every: 2 * TURNS, at: 2 * turn + 1 }, { every: 3 * TURNS, at: 3 * turn + 2 });
}

/** Sentences have the last turn to themselves: a longer one moves what stands below it. */
export const TO_BE_READ = rhythmOf(6);

function rhythm(withEase: Beat, withTrouble: Beat): Rhythm {
  return () => (effort.isGreat ? withTrouble : withEase);
}

export class Turns {
  /** Those that count changes now. */
  static readonly #counting = new Set<Turns>();

  readonly #rhythm: Rhythm;
  readonly #draw: (isAtRest: boolean) => void;
  /** Changes that have followed one another up to now. */
  #changes = 0;

  /**
   * @param rhythm - which of the changes are drawn, besides the first
   * @param draw - called when changes have stopped following one another, and where it is the turn of
   *   this one while a change is put off
   */
  constructor(rhythm: Rhythm, draw: (isAtRest: boolean) => void) {
    this.#rhythm = rhythm;
    this.#draw = draw;
  }

  /** Notes a change; whether it is to be drawn. */
  isTurn(): boolean {
    stillness.afterChange(this.#onStill);
    if (Turns.#counting.has(this)) return this.#isNext();
    Turns.#counting.add(this);
    this.#changes = 0;
    return true;
  }

  /** A change that this one noted is put off: all others count it, and draw in its stead. */
  putOff(): void {
    for (const other of Turns.#counting) {
      if (other !== this && other.#isNext()) other.#draw(false);
    }
  }

  /** The next change is a first one, and nobody waits for rest any more. */
  forget(): void {
    stillness.forget(this.#onStill);
    Turns.#counting.delete(this);
  }

  #isNext(): boolean {
    this.#changes += 1;
    const { every, at } = this.#rhythm();
    return this.#changes % every === at;
  }

  readonly #onStill = (): void => {
    Turns.#counting.delete(this);
    this.#draw(true);
  };
}
