// One drop: its gate, what it draws, how fast, and whether that will do.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { DropMotion, DropView } from '../../state/drop-views.ts';
import { sameData } from '../../state/same-data.ts';
import type { GateMoveEvent } from '../gate/gate-move-event.ts';
import { gateWords } from '../gate/gate-words.ts';
import '../gate/gate.ts';
import { quantity, quantityStyles, type Shown } from '../quantity.ts';
import '../speed-scale/speed-scale.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import '../verdict/verdict.ts';
import { verdictWord } from '../verdict/verdict-word.ts';
import { DropGateEvent, type GateWish } from './drop-gate-event.ts';
import { dropRowStyles } from './drop-row.styles.ts';

/**
 * A row of the list of drops.
 *
 * @element dc-drop-row
 * @fires dc-drop-gate - its gate was moved, or open, shut or only this one was pressed
 */
@customElement('dc-drop-row')
export class DropRow extends LitElement {
  static override styles = [baseStyles, buttonStyles, quantityStyles, dropRowStyles];

  @property({ attribute: false, hasChanged: (next, before) => !sameData(next, before) })
  drop: DropView | undefined;

  /** Where it is by now while a gate moves; the figures of the drop may come a little after it. */
  @property({ attribute: false, hasChanged: (next, before) => !sameData(next, before) })
  motion: DropMotion | undefined;

  protected override render(): TemplateResult {
    const { drop } = this;
    if (!drop) return html`${nothing}`;
    const travel = drop.travel === undefined ? undefined : (this.motion?.travel ?? drop.travel);
    const isOpen = drop.travel === undefined || drop.travel > 0;
    return html`<div class="name">
        <h3 class=${isOpen ? '' : 'shut'}>${drop.name}</h3>
        ${this.#note(drop)}
      </div>
      ${travel === undefined ? nothing : this.#gate(drop, travel)}
      <div class="flow">
        <p class=${isOpen ? 'figure' : 'figure idle'}>
          <span class="for-ears">flow </span>${drop.flow ? quantity(drop.flow) : '–'}
        </p>
        ${drop.need ? html`<p class="note">needs ${text(drop.need)}</p>` : nothing}
      </div>
      <div class="speed">
        <p class=${isOpen ? 'figure' : 'figure idle'}>
          <span class="for-ears">speed </span>${drop.speed ? quantity(drop.speed.shown) : ''}
        </p>
        <dc-speed-scale
          .label=${scaleWords(drop)}
          .range=${drop.range}
          .speed=${drop.speed && (this.motion?.speed ?? drop.speed.velocity)}
          .slowest=${drop.slowest && (this.motion?.slowest ?? drop.slowest.velocity)}
        ></dc-speed-scale>
      </div>
      <div class="verdict">
        <dc-verdict verdict=${drop.verdict}></dc-verdict>
        ${
          drop.slowest && isOpen
            ? html`<p class="note slowest">${drop.slowest.name}
                <span class="whole"
                  ><span class="moving">${drop.slowest.shown.number}</span>\u2009${
                    drop.slowest.shown.unit
                  }</span
                >
              </p>`
            : nothing
        }
      </div>`;
  }

  #note(drop: DropView): TemplateResult | typeof nothing {
    if (drop.travel === undefined) return html`<p class="note">no gate, always open</p>`;
    if (drop.travel === 0 || drop.travel === 1) return nothing;
    return html`<p class="note travel">${gateWords(drop.travel)}</p>`;
  }

  #gate(drop: DropView, travel: number): TemplateResult {
    const isOpen = travel > 0;
    return html`<dc-gate
        class="gate"
        .label=${drop.name}
        .travel=${travel}
        @dc-gate-move=${(event: GateMoveEvent) => this.#onMove(event)}
      ></dc-gate>
      <div class="buttons">
        <button
          type="button"
          aria-label="${isOpen ? 'Shut' : 'Open'} ${drop.name}"
          @click=${() => this.#wish({ kind: isOpen ? 'shut' : 'open' })}
        >
          <span>${isOpen ? 'Shut' : 'Open'}</span>
        </button>
        <button type="button" aria-label="Only ${drop.name}" @click=${() => this.#wish({ kind: 'only' })}>
          <span>Only</span>
        </button>
      </div>`;
  }

  #onMove({ travel, move }: GateMoveEvent): void {
    if (move === 'tap') this.#wish({ kind: travel > 0 ? 'open' : 'shut' });
    else this.#wish({ kind: 'travel', travel, move });
  }

  #wish(wish: GateWish): void {
    if (this.drop) this.dispatchEvent(new DropGateEvent(this.drop.id, wish));
  }
}

function scaleWords({ name, speed, slowest, verdict }: DropView): string {
  if (!speed) return `${name}: ${verdictWord(verdict)}`;
  const own = `${name}: ${text(speed.shown)}, ${verdictWord(verdict)}`;
  return slowest ? `${own}; slowest in ${slowest.name}, ${text(slowest.shown)}` : own;
}

function text({ number, unit }: Shown): string {
  return `${number}\u2009${unit}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-drop-row': DropRow;
  }
}
