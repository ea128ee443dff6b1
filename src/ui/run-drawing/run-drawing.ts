// A line drawing of the run, laid out by itself, not to scale. Line weight follows the diameter, the
// shape of a duct tells how it fares, lengths and speeds are written where there is room. Ducts and
// drops can be pointed at, gone through by the arrow keys, and selected.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type DrawnSection, runDrawing } from '../../plot/run-drawing.ts';
import { arrowsBeside, type SectionLabels } from '../../plot/run-labels.ts';
import { type RunLayout, runLayout } from '../../plot/run-layout.ts';
import { type RunStop, runStep, type RunWay } from '../../plot/run-steps.ts';
import type { PartReading } from '../../state/part-reading.ts';
import { RUN_STATE_WORDS } from '../../state/part-reading.ts';
import type { SectionView } from '../../state/run-view.ts';
import type { Part } from '../../state/selected-part.ts';
import { textSize } from '../operating-plot/text-size.ts';
import { PartEvent } from '../run-editor/run-outline-events.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { verdictShapeStyles } from '../verdict/verdict-shape.styles.ts';
import { verdictWord } from '../verdict/verdict-word.ts';
import { runDrawingStyles } from './run-drawing.styles.ts';
import { type DuctShape, ducts } from './run-duct.ts';
import { runKey } from './run-key.ts';
import { runWish } from './run-keys.ts';
import { RunWindow } from './run-window.ts';
import {
  dropName,
  NAME_INDENT,
  NAME_SIZE,
  namedDrops,
  sectionWords,
  wordPlaces,
} from './run-words.ts';

/** Room for the collector on the left [px]. */
const COLLECTOR_ROOM = 36;
/** Room for the key above the drawing, and for reading and buttons below it [px]. */
const KEY_ROOM = 24;
const FOOT_ROOM = { beside: 44, stacked: 104 };
/** With less width the buttons stand under the reading [px]. */
const BESIDE_FROM = 480;
/** Names take no more than this part of the width [-]. */
const NAMES_PART = 0.43;
/** A duct is hit within so much of its middle, unless its neighbour is nearer [px]. */
const HIT = 44;

/** The ducts where they lie, computed anew only when they, their window or the zoom change. */
interface Drawn {
  readonly for: readonly unknown[];
  readonly width: number;
  readonly height: number;
  readonly pitch: number;
  readonly layout: RunLayout;
  readonly sections: readonly DrawnSection[];
  readonly labels: readonly SectionLabels[];
}

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
  /** A speed with as many figures as any, so that room is kept for it. */
  @property({ attribute: 'widest-speed' }) widestSpeed = '8,888';

  @state() private hovered: RunStop | undefined;
  @state() private focused: RunStop | undefined;

  readonly #size = new SizeController(this);
  readonly #window = new RunWindow(this, () => this.renderRoot.querySelector('.window'));
  /** Where the arrow keys go on from. */
  #stop: RunStop | undefined;
  #drawn: Drawn | undefined;

  /** The drawing as one picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector('svg.run');
  }

  protected override render(): TemplateResult {
    const { width, height } = this.#size;
    const { sections } = this;
    if (sections.length === 0 || width < 240 || height < 120) return html`${nothing}`;
    const foot = width < BESIDE_FROM ? 'stacked' : 'beside';
    const drawn = this.#draw(width, height - KEY_ROOM - FOOT_ROOM[foot]);
    const named = namedDrops(sections, drawn.sections, this.#selectedDrop());
    const flange = drawn.sections[sections.findIndex((section) => section.into < 0)];
    return html`${runKey(this.speedUnit)}
      <div
        class="window ${this.#window.isWhole ? '' : 'zoomed'}"
        @pointerdown=${this.#window.onPointerDown}
        @pointermove=${this.#window.onPointerMove}
        @pointerup=${this.#window.onPointerUp}
        @pointercancel=${this.#window.onPointerUp}
        @wheel=${this.#window.onWheel}
        @touchstart=${this.#window.onTouchStart}
        @touchmove=${this.#window.onTouchMove}
      >
        <svg
          class="run"
          role="listbox"
          aria-label=${this.label}
          aria-description="Arrow keys go from duct to duct, Enter selects, plus and minus zoom, 0 shows the whole run, Shift and arrows move the drawing."
          width=${drawn.width}
          height=${drawn.height}
          viewBox="0 0 ${drawn.width} ${drawn.height}"
          @keydown=${(event: KeyboardEvent) => this.#onKey(event)}
          @pointerleave=${() => this.#onLeave()}
          @focusout=${() => this.#onBlur()}
        >
          <g aria-hidden="true">
            ${flange ? svg`<path class="collector" d=${cyclone(flange.foot.y)} />` : nothing}
            ${this.#halos(drawn)}
            ${ducts(sections.map((section, i) => shapeOf(section, drawn.sections[i]!)))}
            ${sections.map((section, i) => sectionWords(section, drawn.labels[i]!))}
            ${sections.map((section, i) =>
              section.drop && (named.has(i) || this.#isPointedAt('drop', i))
                ? dropName(section, drawn.sections[i]!, this.#chosen(section))
                : nothing,
            )}
          </g>
          ${sections.map((section, i) => this.#options(section, i, drawn))}
        </svg>
      </div>
      <div class="foot ${foot}">${this.#reading()} ${this.#buttons()}</div>`;
  }

  #draw(width: number, height: number): Drawn {
    const { sections } = this;
    const zoom = this.#window.zoom;
    const shape = sections.map(({ into, straight, diameter, size, length, drop }) =>
      [into, straight, diameter, size, length, drop?.name].join('|'),
    );
    const wanted = [width, height, zoom, this.widestSpeed, shape.join('\n')];
    const kept = this.#drawn;
    if (kept?.for.every((value, i) => value === wanted[i])) return kept;

    const layout = runLayout(sections);
    const all = { width: Math.floor(width * zoom), height: Math.floor(height * zoom) };
    const nameRoom = Math.min(
      NAMES_PART * width,
      NAME_INDENT + Math.max(...sections.map(({ drop }) => nameWidth(drop?.name))),
    );
    const right = Math.round(all.width - nameRoom);
    const frame = { left: COLLECTOR_ROOM, right, top: 0, bottom: all.height };
    const lying = runDrawing(
      layout,
      sections.map(({ diameter }) => diameter),
      frame,
    );
    const page = { left: COLLECTOR_ROOM, right, top: 0, bottom: all.height };
    const labels = wordPlaces(lying, sections, this.widestSpeed, page, []);
    this.#drawn = {
      ...all,
      for: wanted,
      pitch: all.height / layout.rows,
      layout,
      sections: lying.map((each, i) => ({ ...each, arrows: arrowsBeside(each, labels[i]!) })),
      labels,
    };
    return this.#drawn;
  }

  /** What is selected and what has the focus, each as an outline around it. */
  #halos(drawn: Drawn): SVGTemplateResult[] {
    return this.sections.flatMap((section, i) =>
      (['section', 'drop'] as const).flatMap((kind) => {
        const isFocused = this.focused?.kind === kind && this.focused.section === i;
        const isSelected = this.#isSelected(kind, section);
        if (!isFocused && !isSelected) return [];
        const tone = isFocused ? 'halo focused' : 'halo';
        const { path, weight, level } = drawn.sections[i]!;
        if (kind === 'drop') {
          const half = Math.min(12, drawn.pitch / 2);
          return [
            svg`<rect class="name-${tone}" x=${level.to + 2} y=${level.y - half} rx="2"
              width=${drawn.width - level.to - 3} height=${2 * half} />`,
          ];
        }
        return [
          svg`<path class=${tone} stroke-width=${weight + 10} d=${path} /><path
              class="halo-paper" stroke-width=${weight + 6} d=${path} />`,
        ];
      }),
    );
  }

  /** What is pointed at and stepped to: over each duct and each name, unseen. */
  #options(section: SectionView, i: number, drawn: Drawn): SVGTemplateResult {
    const { path, level, weight } = drawn.sections[i]!;
    const hit = Math.max(weight, Math.min(HIT, drawn.pitch - 1));
    const { drop } = section;
    return svg`<g
        role="option"
        aria-label=${this.#optionWords('section', section)}
        aria-selected=${this.#isSelected('section', section) ? 'true' : 'false'}
        tabindex=${this.#isTabStop('section', i) ? 0 : -1}
        data-stop="section ${i}"
        @pointerenter=${() => this.#onEnter({ kind: 'section', section: i })}
        @focus=${() => this.#onFocus({ kind: 'section', section: i })}
        @click=${() => this.#onClick('section', section)}
      ><path class="hit" stroke-width=${hit} d=${path} /></g>
      ${
        drop === undefined
          ? nothing
          : svg`<g
              role="option"
              aria-label=${this.#optionWords('drop', section)}
              aria-selected=${this.#isSelected('drop', section) ? 'true' : 'false'}
              tabindex=${this.#isTabStop('drop', i) ? 0 : -1}
              data-stop="drop ${i}"
              @pointerenter=${() => this.#onEnter({ kind: 'drop', section: i })}
              @focus=${() => this.#onFocus({ kind: 'drop', section: i })}
              @click=${() => this.#onClick('drop', section)}
            ><rect class="hit" x=${level.to} y=${level.y - hit / 2}
              width=${drawn.width - level.to} height=${hit} /></g>`
      }`;
  }

  #reading(): TemplateResult {
    const pointed = this.hovered ?? this.focused;
    const part = pointed ? this.#partAt(pointed) : this.selection;
    const reading = part && this.read?.(part);
    if (!reading) {
      return html`<p class="reading hint">Select a duct or a drop to read it.</p>`;
    }
    return html`<p class="reading">
      <strong>${reading.name}</strong> ${reading.figures.map(
        (figure) => html`<span class="figure">${figure}</span> `,
      )}
    </p>`;
  }

  #buttons(): TemplateResult {
    const { isWhole, isClosest } = this.#window;
    const button = (words: string, sign: string, isIdle: boolean, press: () => void) =>
      html`<button
        type="button"
        aria-label=${words}
        aria-disabled=${isIdle ? 'true' : 'false'}
        @click=${press}
      >
        <span class=${sign.length === 1 ? 'sign' : ''}>${sign}</span>
      </button>`;
    return html`<div class="zoom" role="group" aria-label="Zoom of the drawing">
      ${button('Zoom out', '−', isWhole, () => this.#zoom('out'))}
      ${button('Zoom in', '+', isClosest, () => this.#zoom('in'))}
      ${button('Show the whole run', 'whole', isWhole, () => this.#window.showWhole())}
    </div>`;
  }

  /** Short, for it is read of every duct; the one with the focus is read in full. */
  #optionWords(kind: Part['kind'], section: SectionView): string {
    const { drop, name, state: fares } = section;
    const isDrop = kind === 'drop' && drop !== undefined;
    const at = this.focused && this.#partAt(this.focused);
    const part = { kind, id: isDrop ? drop.id : section.id };
    if (at?.kind === part.kind && at.id === part.id) {
      const reading = this.read?.(part);
      if (reading) return [reading.name, ...reading.figures].join(', ');
    }
    return isDrop
      ? `${drop.name}, ${verdictWord(drop.verdict)}`
      : `${name}, ${RUN_STATE_WORDS[fares]}`;
  }

  #partAt({ kind, section }: RunStop): Part | undefined {
    const view = this.sections[section];
    const id = kind === 'drop' ? view?.drop?.id : view?.id;
    return id === undefined ? undefined : { kind, id };
  }

  #isSelected(kind: Part['kind'], section: SectionView): boolean {
    const id = kind === 'drop' ? section.drop?.id : section.id;
    return this.selection?.kind === kind && this.selection.id === id;
  }

  #selectedDrop(): string | undefined {
    return this.selection?.kind === 'drop' ? this.selection.id : undefined;
  }

  #chosen(section: SectionView): 'selected' | 'not selected' {
    return this.#isSelected('drop', section) ? 'selected' : 'not selected';
  }

  #isPointedAt(kind: Part['kind'], section: number): boolean {
    return [this.hovered, this.focused].some(
      (stop) => stop?.kind === kind && stop.section === section,
    );
  }

  /** One of all can be tabbed to: where the keys were last, else what is selected, else the flange. */
  #isTabStop(kind: Part['kind'], section: number): boolean {
    const stop = this.#start();
    return stop.kind === kind && stop.section === section;
  }

  #start(): RunStop {
    if (this.#stop && this.#partAt(this.#stop)) return this.#stop;
    const { selection, sections } = this;
    const at = sections.findIndex((section) =>
      selection?.kind === 'drop' ? section.drop?.id === selection.id : section.id === selection?.id,
    );
    if (selection && at >= 0) return { kind: selection.kind, section: at };
    return { kind: 'section', section: sections.findIndex(({ into }) => into < 0) };
  }

  #go(way: RunWay): void {
    if (!this.#drawn) return;
    const next = runStep(this.sections, this.#drawn.layout, this.#start(), way);
    this.renderRoot
      .querySelector<SVGElement>(`[data-stop='${next.kind} ${next.section}']`)
      ?.focus();
  }

  /** About what is looked at, if there is anything. */
  #zoom(way: 'in' | 'out'): void {
    const looked = this.#stop ?? (this.selection ? this.#start() : undefined);
    const level = looked && this.#drawn?.sections[looked.section]?.level;
    this.#window.step(way, level && { x: (level.from + level.to) / 2, y: level.y });
  }

  #onKey(event: KeyboardEvent): void {
    const wish = runWish(event);
    if (!wish) return;
    if (wish.kind === 'let go' && !this.selection) return;
    event.preventDefault();
    switch (wish.kind) {
      case 'go':
        this.#go(wish.way);
        return;
      case 'pan':
        this.#window.pan(wish.across, wish.down);
        return;
      case 'zoom':
        if (wish.way === 'whole') this.#window.showWhole();
        else this.#zoom(wish.way);
        return;
      case 'select':
        this.#toggle(this.#partAt(this.#start()));
        return;
      case 'let go':
        this.dispatchEvent(new PartEvent(undefined));
    }
  }

  #onEnter(stop: RunStop): void {
    if (!this.#window.isDragging) this.hovered = stop;
  }

  #onLeave(): void {
    this.hovered = undefined;
  }

  #onFocus(stop: RunStop): void {
    this.#stop = stop;
    this.focused = stop;
  }

  #onBlur(): void {
    this.focused = undefined;
  }

  #onClick(kind: Part['kind'], section: SectionView): void {
    if (this.#window.isDragging) return;
    const id = kind === 'drop' ? section.drop?.id : section.id;
    if (id !== undefined) this.#toggle({ kind, id });
  }

  #toggle(part: Part | undefined): void {
    const { selection } = this;
    const isSame = selection?.kind === part?.kind && selection?.id === part?.id;
    this.dispatchEvent(new PartEvent(isSame ? undefined : part));
  }
}

function shapeOf(
  { state: fares }: SectionView,
  { path, weight, arrows, level }: DrawnSection,
): DuctShape {
  return { state: fares, path, weight, arrows, y: level.y };
}

function nameWidth(name: string | undefined): number {
  return name === undefined ? 0 : 1.2 * textSize(name, NAME_SIZE).width;
}

/** A cyclone seen from the side, its inlet at the given height [px]. */
function cyclone(y: number): string {
  return `M6,${y - 9}H31V${y + 9}L22,${y + 30}H15L6,${y + 9}Z`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-drawing': RunDrawing;
  }
}
