// The drops of the session with their gates. Moves of gates go up to the page, which knows how to
// slide them; this panel only says which drop they belong to.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { removeGateSet, saveGateSet } from '../../shop/edits/edit-gate-sets.ts';
import { freshId } from '../../shop/edits/fresh-id.ts';
import { dropMotions, dropViews } from '../../state/drop-views.ts';
import type { Session } from '../../state/session.ts';
import '../drop-list/drop-list.ts';
import type { RemoveSetEvent, SaveSetEvent } from '../gate-sets/gate-set-event.ts';
import { inTurns } from '../in-turns.ts';
import '../tried-table/tried-table.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import '../words-key/words-key.ts';

/** @element dc-drops-panel */
@customElement('dc-drops-panel')
export class DropsPanel extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }
    `,
  ];

  readonly #session = new SessionController(this, readDrops, { turn: 2 });
  readonly #later = new SessionController(this, readRows, { turn: 4 });
  readonly #motions = new SessionController(
    this,
    ({ shownReport }) => dropMotions(shownReport.value),
    'in step',
  );

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    return html`<dc-drop-list
        .drops=${inTurns(view.drops, this.#later.value)}
        .motions=${this.#motions.value ?? []}
        .sets=${view.sets}
        .open=${view.open.length > 0}
        @dc-save-set=${({ name }: SaveSetEvent) => this.#save(name)}
        @dc-remove-set=${({ set }: RemoveSetEvent) => view.session.edit(removeGateSet(set))}
      ></dc-drop-list>
      <dc-tried-table .trail=${view.trail} .units=${view.units}></dc-tried-table>
      <dc-words-key .range=${view.range} .units=${view.units}></dc-words-key>`;
  }

  #save(name: string): void {
    const view = this.#session.value;
    if (!view) return;
    const id = freshId(
      name,
      view.sets.map((set) => set.id),
    );
    view.session.edit(saveGateSet({ id, name, open: [...view.open] }));
  }
}

function readDrops(session: Session) {
  const shop = session.shop.value;
  const report = session.report.value;
  return {
    session,
    open: report.open,
    trail: session.trail.value,
    range: shop.carryingRange,
    units: session.units.value,
    drops: readRows(session),
    sets: shop.gateSets.map(({ id, name, open }) => ({
      id,
      name,
      open,
      current: isSameSet(open, report.open),
    })),
  };
}

function readRows({ shop, shownReport, report, units }: Session) {
  return dropViews(shop.value, shownReport.value, report.value, units.value);
}

function isSameSet(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((id) => b.includes(id));
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-drops-panel': DropsPanel;
  }
}
