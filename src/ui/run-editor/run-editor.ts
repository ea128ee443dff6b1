// The editor of the session's run: the outline, the form of what is selected, what can be done with
// it, and after each such act a notice with its undo. (A little over 200 lines: what is selected, acts on
// it and their notice are one state.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { dropFormView } from '../../state/run-editor/drop-form-view.ts';
import { type OutlineOrder, type OutlineRow, runOutline } from '../../state/run-editor/outline.ts';
import { partActions, partAfter } from '../../state/run-editor/part-actions.ts';
import { sectionFormView } from '../../state/run-editor/section-form-view.ts';
import { hasPart, type Part } from '../../state/selected-part.ts';
import type { Session } from '../../state/session.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import './drop-form.ts';
import './part-actions.ts';
import { runEditorStyles } from './run-editor.styles.ts';
import type { PartActionEvent, PartEvent } from './run-outline-events.ts';
import './run-outline.ts';
import './section-form.ts';
import type { ShopEditEvent } from './shop-edit-event.ts';

/** What was done last, as long as undo would take just that back. */
interface Notice {
  readonly words: string;
  /** The shop right after it. */
  readonly after: Shop;
}

const ORDERS: readonly { readonly order: OutlineOrder; readonly words: string }[] = [
  { order: 'flow', words: 'As the air flows' },
  { order: 'outward', words: 'From the collector' },
];

/** @element dc-run-editor */
@customElement('dc-run-editor')
export class RunEditor extends LitElement {
  static override styles = [baseStyles, buttonStyles, fieldStyles, runEditorStyles];

  @state() private order: OutlineOrder = 'flow';

  @state() private notice: Notice | undefined;

  /** Why the last edit was not made; empty where it was. */
  @state() private problem = '';

  #session: Session | undefined;

  readonly #read = new SessionController(this, (session) => {
    this.#session = session;
    const [shop, units] = [session.shop.value, session.units.value];
    return { shop, units, model: session.model.value, part: session.selection.value };
  });

  protected override render(): TemplateResult {
    const view = this.#read.value;
    if (!view) return html`${nothing}`;
    const { shop, units, part } = view;
    return html`<div class="bar">
        <div role="group" aria-label="Read the run">
          ${ORDERS.map(
            ({ order, words }) => html`<button
              type="button"
              aria-pressed=${order === this.order ? 'true' : 'false'}
              @click=${() => this.#onOrder(order)}
            >
              <span>${words}</span>
            </button>`,
          )}
        </div>
        <div class="notice" role="status">${this.#noticeOn(shop)}</div>
      </div>
      <dc-run-outline
        order=${this.order}
        .rows=${runOutline(shop, this.order, units)}
        .openPart=${part}
        @dc-part=${(event: PartEvent) => this.#onPart(event)}
      >
        ${part ? keyed(`${part.kind} ${part.id}`, this.#open(view, part)) : nothing}
      </dc-run-outline>`;
  }

  #noticeOn(shop: Shop): TemplateResult | typeof nothing {
    if (this.notice?.after !== shop) return nothing;
    return html`<span>${this.notice.words}</span>
      <button type="button" aria-label="Undo: ${this.notice.words}" @click=${() => this.#undo()}>
        <span>Undo</span>
      </button>`;
  }

  #open(
    {
      shop,
      units,
      model,
    }: { shop: Shop; units: Session['units']['value']; model: Session['model']['value'] },
    part: Part,
  ): TemplateResult {
    const section =
      part.kind === 'section' ? sectionFormView(shop, model, part.id, units) : undefined;
    const drop = part.kind === 'drop' ? dropFormView(shop, model, part.id, units) : undefined;
    const label = section?.label ?? drop?.drop.name ?? '';
    return html`<section aria-label=${label} @keydown=${(event: KeyboardEvent) => this.#onKey(event, part)}>
      <h3>${label}</h3>
      ${this.problem === '' ? nothing : html`<p class="problem" role="alert">${this.problem}</p>`}
      <dc-part-actions
        label=${label}
        .actions=${partActions(shop, part, units)}
        @dc-part-action=${(event: PartActionEvent) => this.#onAction(event, part)}
      ></dc-part-actions>
      ${
        section
          ? html`<dc-section-form
              .view=${section}
              .units=${units}
              @dc-shop-edit=${(event: ShopEditEvent) => this.#onEdit(event)}
            ></dc-section-form>`
          : html`<dc-drop-form
              .view=${drop}
              .units=${units}
              @dc-shop-edit=${(event: ShopEditEvent) => this.#onEdit(event)}
            ></dc-drop-form>`
      }
    </section>`;
  }

  #onOrder(order: OutlineOrder): void {
    this.order = order;
  }

  #onPart({ part }: PartEvent): void {
    this.problem = '';
    this.#session?.select(part);
  }

  #onEdit(event: ShopEditEvent): void {
    const problems = this.#session?.edit(event.edit, event.mergeKey) ?? [];
    event.problems = problems;
    this.problem = problemWords(problems);
  }

  #onAction({ action: id }: PartActionEvent, part: Part): void {
    const session = this.#session;
    if (!session) return;
    const before = session.shop.peek();
    const action = partActions(before, part, session.units.peek()).find((each) => each.id === id);
    if (!action) return;
    const problems = session.edit(action.edit);
    this.problem = problemWords(problems);
    if (problems.length > 0) return;
    const after = session.shop.peek();
    this.notice = { words: action.done, after };
    const rows = runOutline(before, this.order, session.units.peek());
    const next = partAfter(before, after, part, rowLeft(rows, part, after));
    session.select(next);
    if (next) this.#focus(next);
  }

  #undo(): void {
    const session = this.#session;
    if (!session) return;
    session.undo();
    this.notice = undefined;
    const [first] = runOutline(session.shop.peek(), this.order, session.units.peek());
    const part = session.selection.peek() ?? first;
    if (part) this.#focus(part);
  }

  #onKey(event: KeyboardEvent, part: Part): void {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    this.renderRoot.querySelector('dc-run-outline')?.focusPart(part);
  }

  /** Puts the focus on a row once it is drawn. */
  #focus(part: Part): void {
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector('dc-run-outline')?.focusPart(part),
    );
  }
}

/** What to look at when a part is gone: the next row of those that are left, else the one before. */
function rowLeft(rows: readonly OutlineRow[], part: Part, after: Shop): Part | undefined {
  const at = rows.findIndex(({ kind, id }) => kind === part.kind && id === part.id);
  const order = [...rows.slice(at + 1), ...rows.slice(0, at).toReversed()];
  const row = order.find((each) => hasPart(after, each));
  return row && { kind: row.kind, id: row.id };
}

function problemWords(problems: readonly { readonly place: string; readonly message: string }[]) {
  const [first] = problems;
  return first ? `Not done: ${first.place} ${first.message}.` : '';
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-run-editor': RunEditor;
  }
}
