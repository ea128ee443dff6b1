// Plays the gates, so that the point is seen to travel along the curve: play and pause, one step back
// or on, and the gates put back to where they were. Where motion is unwanted there are steps only.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { GatePositions } from '../../state/gate-positions.ts';
import { gatePlay, type PlayedDrop, type PlayStop } from '../../state/gate-play.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { gatePlayStyles } from './gate-play.styles.ts';
import { type GatePace, GatesEvent } from './gates-event.ts';

/** How long gates are on their way to the next stop, and how long they rest there [ms]. */
const PACES = { drop: { way: 500, rest: 700 }, draw: { way: 1200, rest: 0 } } as const;

/** What is being played. */
interface Played {
  readonly stops: readonly PlayStop[];
  /** The stop that the gates are at or on their way to, counted from 0. */
  readonly at: number;
  /** Where the gates were before. */
  readonly before: GatePositions;
}

/**
 * @element dc-gate-play
 * @fires dc-gates - the gates are to move to the next stop, or back to where they were
 */
@customElement('dc-gate-play')
export class GatePlay extends LitElement {
  static override styles = [baseStyles, buttonStyles, gatePlayStyles];

  @property({ attribute: false }) drops: readonly PlayedDrop[] = [];
  /** Where the gates are to stand now. If a hand moves one, the play is over. */
  @property({ attribute: false }) gates: GatePositions = new Map();
  /** Id of the drop whose gate is drawn slowly at the end. */
  @property() slow: string | undefined;

  @state() private played: Played | undefined;
  @state() private isRunning = false;
  @state() private reducesMotion = false;

  readonly #motion = matchMedia('(prefers-reduced-motion: reduce)');
  readonly #onMotion = (): void => {
    this.reducesMotion = this.#motion.matches;
    if (this.reducesMotion) this.#pause();
  };
  #timer: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.#motion.addEventListener('change', this.#onMotion);
    this.#onMotion();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#motion.removeEventListener('change', this.#onMotion);
    this.#pause();
  }

  /** While nothing is played, gates that move are none of its business. */
  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    const onlyGates = changed.size === 1 && changed.has('gates');
    return !onlyGates || this.played !== undefined || !this.hasUpdated;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { played } = this;
    if (!changed.has('gates') || !played) return;
    if (this.gates === played.stops[played.at]?.gates) return;
    this.#pause();
    this.played = undefined;
  }

  protected override render(): TemplateResult {
    const { played } = this;
    const last = (played?.stops.length ?? 0) - 1;
    return html`${
      this.reducesMotion
        ? nothing
        : html`<button
            type="button"
            aria-label=${this.isRunning ? 'Pause' : 'Play the gates'}
            @click=${() => this.#onPlay()}
          >
            <span>${this.isRunning ? 'Pause' : 'Play'}</span>
          </button>`
    }
      <button
        type="button"
        aria-label="Step back"
        ?disabled=${!played || played.at === 0}
        @click=${() => this.#onStep(-1)}
      >
        <span>Back</span>
      </button>
      <button
        type="button"
        aria-label="Next step of the play"
        ?disabled=${played?.at === last}
        @click=${() => this.#onStep(1)}
      >
        <span>Next</span>
      </button>
      ${
        played
          ? html`<button
                type="button"
                aria-label="Put back the gates"
                @click=${() => this.#onPutBack(played)}
              >
                <span>Put back</span>
              </button>
              <p>
                <span aria-hidden="true">${played.at + 1}/${last + 1}</span>
                <span class="for-ears">
                  Step ${played.at + 1} of ${last + 1}: ${played.stops[played.at]?.words}
                </span>
              </p>`
          : nothing
      }`;
  }

  #onPlay(): void {
    if (this.isRunning) {
      this.#pause();
      return;
    }
    const { played } = this;
    const isOver = played && played.at === played.stops.length - 1;
    this.isRunning = true;
    if (isOver) this.#goTo({ ...played, at: 0 });
    else this.#step(1);
  }

  #onStep(by: number): void {
    this.#pause();
    this.#step(by);
  }

  #onPutBack({ before }: Played): void {
    this.#pause();
    this.played = undefined;
    this.dispatchEvent(new GatesEvent(before, 'usual'));
  }

  #step(by: number): void {
    const { played } = this;
    const at = played ? played.at + by : 0;
    const next = played ?? { stops: gatePlay(this.drops, this.slow), at, before: this.gates };
    if (at < 0 || at >= next.stops.length) this.#pause();
    else this.#goTo({ ...next, at });
  }

  #goTo(next: Played): void {
    const stop = next.stops[next.at];
    if (!stop) return;
    this.played = next;
    const { way, rest } = PACES[stop.kind];
    const pace: GatePace = this.isRunning ? { evenly: way } : 'usual';
    this.dispatchEvent(new GatesEvent(stop.gates, pace));
    if (this.isRunning) this.#timer = setTimeout(() => this.#step(1), way + rest);
  }

  #pause(): void {
    clearTimeout(this.#timer);
    this.isRunning = false;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-gate-play': GatePlay;
  }
}
