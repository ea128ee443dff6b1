// A blast gate as it hangs on the pipe: a blade in its rails, drawn out sideways by its grip. What
// the blade no longer covers of the round bore is what the air has.

import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { movedBy } from '../moved-by.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { gateStyles } from './gate.styles.ts';
import { type GateMove, GateMoveEvent } from './gate-move-event.ts';
import { gateWords } from './gate-words.ts';

/** Diameter of the bore, which is also how far the blade travels [px]. */
const BORE = 36;
/** A hand that moves less has tapped [px]. */
const TAP_ROOM = 3;
const STEP = 0.01;
const LONG_STEP = 0.1;

/** How far a key moves the blade [-]; to an end by an endless step. */
const KEY_STEPS: Readonly<Record<string, number>> = {
  ArrowRight: STEP,
  ArrowUp: STEP,
  ArrowLeft: -STEP,
  ArrowDown: -STEP,
  PageUp: LONG_STEP,
  PageDown: -LONG_STEP,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};

interface Drag {
  readonly pointer: number;
  /** Where it began [px], and with which travel [-]. */
  readonly startX: number;
  readonly startTravel: number;
  /** Whether the hand has left the place where it came down. */
  readonly moved: boolean;
}

/**
 * A gate that is dragged, stepped by keys, or set by its `travel`.
 *
 * Arrows move it by 1 %, with Shift or by Page keys by 10 %, Home shuts it, End draws it right out.
 * A tap asks for the other end. Escape during a drag puts it back, and so does the page when it
 * scrolls under the finger instead.
 *
 * @element dc-gate
 * @fires dc-gate-move - the blade was moved; carries travel and how
 */
@customElement('dc-gate')
export class Gate extends LitElement {
  static override styles = [baseStyles, gateStyles];

  /** What the gate belongs to, for its name. */
  @property() label = '';
  /** 0 shut to 1 drawn right out [-]. */
  @property({ type: Number }) travel = 0;

  #drag: Drag | undefined;

  protected override render(): TemplateResult {
    const shift = Math.round(this.travel * BORE * 100) / 100;
    return html`<div
      class=${this.travel > 0 ? 'gate open' : 'gate'}
      role="slider"
      tabindex="0"
      aria-label="Gate, ${this.label}"
      aria-orientation="horizontal"
      aria-valuemin="0"
      aria-valuemax="100"
      aria-valuenow=${Math.round(this.travel * 100)}
      aria-valuetext=${gateWords(this.travel)}
      @keydown=${this.#onKey}
      @pointerdown=${this.#onPointerDown}
      @pointermove=${this.#onPointerMove}
      @pointerup=${this.#onPointerEnd}
      @pointercancel=${this.#putBack}
      @lostpointercapture=${this.#putBack}
    >
      <svg width="116" height="44" aria-hidden="true">
        <path class="rails" d="M2,1H84M2,43H84" />
        <circle class="bore" cx="22" cy="22" r="18" />
      </svg>
      <div class="slide" ${movedBy(`translateX(${shift}px)`)}>
        <div class="blade"></div>
        <div class="neck"></div>
        <div class="grip"></div>
      </div>
      <svg width="116" height="44" aria-hidden="true">
        <circle class="hidden-rim" cx="22" cy="22" r="18" />
      </svg>
    </div>`;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && this.#drag) {
      this.#putBack();
      return;
    }
    const step = KEY_STEPS[event.key];
    if (step === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const long = event.shiftKey && Math.abs(step) === STEP;
    this.#send(this.travel + (long ? step * (LONG_STEP / STEP) : step), 'step');
  };

  readonly #onPointerDown = (event: PointerEvent): void => {
    if (event.button !== 0 || this.#drag) return;
    const target = event.currentTarget as HTMLElement;
    target.setPointerCapture(event.pointerId);
    this.#drag = {
      pointer: event.pointerId,
      startX: event.clientX,
      startTravel: this.travel,
      moved: false,
    };
  };

  readonly #onPointerMove = (event: PointerEvent): void => {
    if (this.#drag?.pointer !== event.pointerId) return;
    const { startX, startTravel, moved } = this.#drag;
    const way = event.clientX - startX;
    if (!moved && Math.abs(way) < TAP_ROOM) return;
    this.#drag = { ...this.#drag, moved: true };
    this.#send(startTravel + way / BORE, 'drag');
  };

  readonly #onPointerEnd = (event: PointerEvent): void => {
    if (this.#drag?.pointer !== event.pointerId) return;
    const { moved } = this.#drag;
    this.#drag = undefined;
    if (moved) this.#send(this.travel, 'rest');
    else this.dispatchEvent(new GateMoveEvent(this.travel > 0 ? 0 : 1, 'tap'));
  };

  readonly #putBack = (): void => {
    if (!this.#drag) return;
    const { startTravel } = this.#drag;
    this.#drag = undefined;
    this.#send(startTravel, 'rest');
  };

  #send(wanted: number, move: GateMove): void {
    const inside = Math.min(1, Math.max(0, wanted));
    const travel = move === 'step' ? Math.round(inside * 100) / 100 : inside;
    this.travel = travel;
    this.dispatchEvent(new GateMoveEvent(travel, move));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-gate': Gate;
  }
}
