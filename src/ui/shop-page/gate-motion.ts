// Moves the gates of a session in step with the screen: a drag is taken once a frame, and a click
// slides the blades over, so that the point is seen to travel along the curve.
//
// Browsers hand the moves of a pointer over once a frame, just before they draw it, so a move is taken at
// once. Where more of them come, those between wait for the frame.

import { positionsBetween } from '../../state/gate-positions.ts';
import { effort } from '../effort.ts';
import type { GatePace } from '../gate-play/gates-event.ts';
import type { Session } from '../../state/session.ts';

/** How long a slide lasts [ms]. */
const SLIDE = 180;
/** Moves that follow one another sooner are within one frame, even of the fastest screens [ms]. */
const WITHIN_FRAME = 4;

export class GateMotion {
  readonly #session: Session;
  readonly #reducesMotion = matchMedia('(prefers-reduced-motion: reduce)');
  #frame = 0;
  /** When a drag was taken last [ms]. */
  #takenAt = Number.NEGATIVE_INFINITY;
  #drag: { drop: string; travel: number } | undefined;

  /** @param session - whose gates are moved */
  constructor(session: Session) {
    this.#session = session;
  }

  /** Takes a gate along under the hand. */
  drag(drop: string, travel: number): void {
    const waits = this.#drag !== undefined;
    this.#drag = { drop, travel };
    if (waits) return;
    this.stop();
    if (performance.now() - this.#takenAt >= WITHIN_FRAME) this.#takeDrag();
    else this.#frame = requestAnimationFrame(() => this.#takeDrag());
  }

  /** Ends a drag: the state is tried. */
  rest(drop: string, travel: number): void {
    this.stop();
    this.#drag = undefined;
    this.#session.dragGate(drop, travel);
    this.#session.rest();
  }

  /**
   * Slides the gates from where they are shown to where they are to stand.
   *
   * @param pace - as after a click, or evenly over some time [ms]
   */
  slide(pace: GatePace = 'usual'): void {
    const time = pace === 'usual' ? SLIDE : pace.evenly;
    const eased = pace === 'usual' ? easeOut : evenly;
    this.stop();
    const session = this.#session;
    const from = session.shownGates.peek();
    const arrive = () => {
      session.showGates(session.gates.peek());
      session.rest();
    };
    if (this.#reducesMotion.matches) {
      arrive();
      return;
    }
    const begin = performance.now();
    const step = (now: number) => {
      const part = Math.min(1, Math.max(0, (now - begin) / time));
      if (part === 1) {
        arrive();
        return;
      }
      const shown = positionsBetween(from, session.gates.peek(), eased(part));
      effort.measure(() => session.showGates(shown));
      this.#frame = requestAnimationFrame(step);
    };
    this.#frame = requestAnimationFrame(step);
  }

  /** Leaves everything where it is. */
  stop(): void {
    if (this.#frame !== 0) cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }

  #takeDrag(): void {
    const drag = this.#drag;
    this.#drag = undefined;
    this.#takenAt = performance.now();
    if (drag) effort.measure(() => this.#session.dragGate(drag.drop, drag.travel));
  }
}

function evenly(part: number): number {
  return part;
}

/** Fast at first, then settling, without a bounce. */
function easeOut(part: number): number {
  return 1 - (1 - part) ** 3;
}
