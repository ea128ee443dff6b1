// A pointer that went down on a mark or near it: a drag once it goes some way, else a press, which means
// the mark where it hit its middle, and a place of its own between there and the rim of the handle. So
// a finger has a large handle and can still set a point close to another.

import type { Place } from '../../plot/frame.ts';
import type { ShownMark } from './shown-marks.ts';

/** How far it goes before it counts as a drag [px of the page]. */
const SLACK = 4;
/** So near to its middle the mark is meant [px of the page]. */
const MEANT = 9;

export class MarkDrag {
  readonly pointer: number;
  readonly shown: ShownMark;
  /** Where it went down [px of the picture]. */
  readonly down: Place;
  #hasMoved = false;

  constructor(pointer: number, shown: ShownMark, down: Place) {
    this.pointer = pointer;
    this.shown = shown;
    this.down = down;
  }

  get hasMoved(): boolean {
    return this.#hasMoved;
  }

  /**
   * Where the mark goes with the pointer. It keeps its distance, so that a finger need not cover it.
   *
   * @param at - where the pointer is [px of the picture]
   * @param scale - pixels of the picture for one of the page [-]
   * @returns the place [px of the picture]; undefined while it is no drag yet
   */
  follow(at: Place, scale: number): Place | undefined {
    const { down, shown } = this;
    const by = { x: at.x - down.x, y: at.y - down.y };
    this.#hasMoved ||= Math.hypot(by.x, by.y) >= SLACK * scale;
    return this.#hasMoved ? { x: shown.place.x + by.x, y: shown.place.y + by.y } : undefined;
  }

  /** Whether a press without a drag meant the mark itself; scale as above. */
  meansMark(scale: number): boolean {
    const { down, shown } = this;
    return Math.hypot(down.x - shown.place.x, down.y - shown.place.y) <= MEANT * scale;
  }
}
