// A line drawing of the run, laid out by itself, not to scale. Line weight follows the diameter, the
// shape of a duct tells how it fares, lengths and speeds are written where there is room. Ducts and
// drops can be pointed at, gone through by the arrow keys, and selected. (A little over 200 lines: what
// pointer and keys do belongs together.)

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { type RunStop, runStep, type RunWay } from '../../plot/run-steps.ts';
import type { PartReading } from '../../state/part-reading.ts';
import type { SectionView } from '../../state/run-view.ts';
import type { Part } from '../../state/selected-part.ts';
import { PartEvent } from '../run-editor/run-outline-events.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { verdictShapeStyles } from '../verdict/verdict-shape.styles.ts';
import { type DrawnRun, RunDraughtsman } from './drawn-run.ts';
import { runDrawingStyles } from './run-drawing.styles.ts';
import { runReading, zoomButtons } from './run-foot.ts';
import { runKey } from './run-key.ts';
import { runWish } from './run-keys.ts';
import { runOptions } from './run-options.ts';
import { runPicture } from './run-picture.ts';
import { partAt, stopOf } from './run-stops.ts';
import { RunWindow } from './run-window.ts';

/** Room for the key above the drawing, and for reading and buttons below it [px]. */
const KEY_ROOM = 24;
const FOOT_ROOM = { beside: 44, stacked: 104 };
/** With less width the buttons stand under the reading [px]. */
const BESIDE_FROM = 480;
/** Without it nothing could be told apart [px]. */
const LEAST = { width: 240, height: 120 };

/**
 * @element dc-run-drawing
 * @fires dc-part - a section or drop was selected, or let go
 */
@customElement('dc-run-drawing')
export class RunDrawing extends LitElement {
  static override styles = [baseStyles, buttonStyles, verdictShapeStyles, runDrawingStyles];

  /** The drawing in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) sections: readonly SectionView[] = [];
  /** The part that is looked at. */
  @property({ attribute: false }) selection: Part | undefined;
  /** Reads a part, when it is pointed at; a new function says that the figures have changed. */
  @property({ attribute: false }) read: ((part: Part) => PartReading | undefined) | undefined;
  /** What the speeds are written in. */
  @property({ attribute: 'speed-unit' }) speedUnit = '';
  /** The widest speed that is ever written, so that room is kept for it. */
  @property({ attribute: 'widest-speed' }) widestSpeed = '8,888';

  @state() private hovered: RunStop | undefined;
  @state() private focused: RunStop | undefined;

  readonly #size = new SizeController(this);
  readonly #window = new RunWindow(this, () => this.renderRoot.querySelector('.window'));
  readonly #draughtsman = new RunDraughtsman();
  #drawn: DrawnRun | undefined;
  #foot: keyof typeof FOOT_ROOM = 'beside';
  /** Where the arrow keys go on from. */
  #stop: RunStop | undefined;

  /** The drawing, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector<SVGSVGElement>('svg.run');
  }

  /** Draws by the size that it has now, without waiting for a frame. */
  drawAtOnce(): void {
    this.#size.measure();
    this.requestUpdate();
    this.performUpdate();
  }

  protected override willUpdate(): void {
    const { width, height } = this.#size;
    const { sections } = this;
    const hasRoom = width >= LEAST.width && height >= LEAST.height;
    this.#foot = width < BESIDE_FROM ? 'stacked' : 'beside';
    this.#drawn =
      sections.length > 0 && hasRoom
        ? this.#draughtsman.draw(sections, {
            width,
            height: height - KEY_ROOM - FOOT_ROOM[this.#foot],
            zoom: this.#window.zoom,
            widestSpeed: this.widestSpeed,
          })
        : undefined;
  }

  protected override render(): TemplateResult {
    const { sections, hovered, focused } = this;
    const drawn = this.#drawn;
    if (!drawn) return html`${nothing}`;
    const { scale } = this.#size;
    const pointed = hovered ?? focused;
    const part = pointed ? partAt(sections, pointed) : this.selection;
    return html`${guard([this.speedUnit], () => runKey(this.speedUnit))}
      <div
        class="window ${this.#window.isWhole ? '' : 'zoomed'}"
        @pointerdown=${this.#window.onPointerDown}
        @pointermove=${this.#window.onPointerMove}
        @pointerup=${this.#window.onPointerUp}
        @pointercancel=${this.#window.onPointerUp}
        @wheel=${this.#window.onWheel}
        @touchstart=${this.#window.onTouchStart}
        @touchmove=${this.#window.onTouchMove}
        @focusout=${this.#onBlur}
      >
        <svg
          class="run"
          role="listbox"
          aria-label=${this.label}
          data-caption="Speeds in ${this.speedUnit}. Solid ducts carry, in beaded ones chips settle, double lines are tight, pale ducts are still."
          aria-description="Arrow keys go from duct to duct, Enter selects, plus and minus zoom, 0 shows the whole run, Shift and arrows move the drawing."
          width=${scale * drawn.width}
          height=${scale * drawn.height}
          viewBox="0 0 ${drawn.width} ${drawn.height}"
          @keydown=${this.#onKey}
          @pointerleave=${this.#onLeave}
        >
          ${runPicture(sections, drawn, { selected: stopOf(sections, this.selection), hovered, focused })}
          ${this.#targets(drawn)}
        </svg>
      </div>
      <div class="foot ${this.#foot}">
        ${runReading(part && this.read?.(part))}
        ${guard([this.#window.zoom], () => zoomButtons({ ...this.#zooms(), zoom: this.#zoom }))}
      </div>`;
  }

  #targets(drawn: DrawnRun): SVGTemplateResult {
    const { sections, focused } = this;
    const fares = sections.map(({ state: now, drop }) => `${now} ${drop?.verdict ?? ''}`).join();
    const part = focused && partAt(sections, focused);
    const reading = part && this.read?.(part);
    const words = reading && [reading.name, ...reading.figures].join(', ');
    const tabStop = this.#start();
    const at = `${tabStop.kind} ${tabStop.section}`;
    return svg`${guard([drawn, fares, this.selection, at, words], () =>
      runOptions(sections, drawn, {
        selected: stopOf(sections, this.selection),
        tabStop,
        focused: focused && words !== undefined ? { stop: focused, words } : undefined,
        onEnter: this.#onEnter,
        onFocus: this.#onFocus,
        onClick: this.#onClick,
      }),
    )}`;
  }

  #zooms() {
    return { isWhole: this.#window.isWhole, isClosest: this.#window.isClosest };
  }

  /** Where the keys were last, else what is selected, else the flange. */
  #start(): RunStop {
    const { sections } = this;
    if (this.#stop && partAt(sections, this.#stop)) return this.#stop;
    const flange = sections.findIndex(({ into }) => into < 0);
    return stopOf(sections, this.selection) ?? { kind: 'section', section: flange };
  }

  #go(way: RunWay): void {
    if (!this.#drawn) return;
    const { kind, section } = runStep(this.sections, this.#drawn.layout, this.#start(), way);
    this.renderRoot.querySelector<SVGElement>(`[data-stop='${kind} ${section}']`)?.focus();
  }

  #toggle(part: Part | undefined): void {
    const { selection } = this;
    const isSame = selection?.kind === part?.kind && selection?.id === part?.id;
    this.dispatchEvent(new PartEvent(isSame ? undefined : part));
  }

  /** About what is looked at, if there is anything. */
  readonly #zoom = (way: 'in' | 'out' | 'whole'): void => {
    if (way === 'whole') {
      this.#window.showWhole();
      return;
    }
    const looked = this.#stop ?? stopOf(this.sections, this.selection);
    const { scale } = this.#size;
    const level = looked && this.#drawn?.sections[looked.section]?.level;
    this.#window.step(
      way,
      level && { x: (scale * (level.from + level.to)) / 2, y: scale * level.y },
    );
  };

  readonly #onKey = (event: KeyboardEvent): void => {
    const wish = runWish(event);
    if (!wish || (wish.kind === 'let go' && !this.selection)) return;
    event.preventDefault();
    switch (wish.kind) {
      case 'go':
        this.#go(wish.way);
        return;
      case 'pan':
        this.#window.pan(wish.across, wish.down);
        return;
      case 'zoom':
        this.#zoom(wish.way);
        return;
      case 'select':
        this.#toggle(partAt(this.sections, this.#start()));
        return;
      case 'let go':
        this.dispatchEvent(new PartEvent(undefined));
    }
  };

  readonly #onEnter = (stop: RunStop): void => {
    if (!this.#window.isDragging) this.hovered = stop;
  };

  readonly #onLeave = (): void => {
    this.hovered = undefined;
  };

  readonly #onFocus = (stop: RunStop): void => {
    this.#stop = stop;
    this.focused = stop;
  };

  readonly #onBlur = (): void => {
    this.focused = undefined;
  };

  readonly #onClick = (stop: RunStop): void => {
    const part = partAt(this.sections, stop);
    if (part && !this.#window.isDragging) this.#toggle(part);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-drawing': RunDrawing;
  }
}
