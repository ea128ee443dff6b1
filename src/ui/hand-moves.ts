// What a hand moves, followed as fast as the processor can: where it has trouble, every third move is
// made and what hangs on it is drawn in the frames of those between. None is lost: the last one is made
// when the hand rests or lets go.

import { AS_IT_CAN, Turns } from './turns.ts';

/** The moves of one hand. */
export class HandMoves<Move> {
  readonly #make: (move: Move) => void;
  readonly #turns = new Turns(AS_IT_CAN, () => this.#makeKept());
  /** The latest move, where it was put off. */
  #kept: Move | undefined;

  /** @param make - makes a move */
  constructor(make: (move: Move) => void) {
    this.#make = make;
  }

  /** The move that was put off and is still to be made. */
  get kept(): Move | undefined {
    return this.#kept;
  }

  /** The hand has moved: the move is made, or put off. */
  take(move: Move): void {
    this.#kept = move;
    if (this.#turns.isTurn()) this.#makeKept();
    else this.#turns.putOff();
  }

  /** The hand lets go where it is. */
  letGo(): void {
    this.#turns.forget();
    this.#makeKept();
  }

  /** The move that was put off is not made after all. */
  drop(): void {
    this.#turns.forget();
    this.#kept = undefined;
  }

  #makeKept(): void {
    const move = this.#kept;
    this.#kept = undefined;
    if (move !== undefined) this.#make(move);
  }
}
