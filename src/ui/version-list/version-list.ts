// Earlier versions of one shop: when each was set aside and what differs from the one after it, with
// a way back to it and a way to save it as a file.

import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ShopVersion } from '../../shop/store/shop-store.ts';
import { versionRows, type VersionRow } from '../../state/version-rows.ts';
import { ShelfEvent } from '../shop-list/shelf-event.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';

/**
 * @element dc-version-list
 * @fires dc-shelf - a version is to be put back, or saved as a file
 */
@customElement('dc-version-list')
export class VersionList extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      :host {
        display: block;
        margin-block: 4px 8px;
        font-size: var(--dc-small);
        line-height: 1.25rem;
      }

      ol {
        margin: 0;
        padding: 0;
        list-style: none;
      }

      li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        align-items: center;
        gap: 0 24px;
        border-block-start: 1px solid var(--dc-rule);
      }

      p {
        margin: 0;
        padding-block: 8px;
      }

      time {
        display: inline-block;
        min-inline-size: 21ch;
        font-variant-numeric: tabular-nums;
      }

      .difference {
        color: var(--dc-ink-soft);
        overflow-wrap: anywhere;
      }

      .actions {
        display: flex;
        gap: 0 16px;
      }

      @media (max-width: 44.9375em) {
        li {
          grid-template-columns: minmax(0, 1fr);
          padding-block-end: 4px;
        }

        p {
          padding-block-end: 0;
        }

        .difference {
          display: block;
        }

        .actions {
          margin-inline-start: -6px;
        }
      }
    `,
  ];

  /** Id of the shop. */
  @property() shop = '';

  /** The shop as it is now. */
  @property({ attribute: false }) now: unknown;

  /** Finds what was set aside, the latest first. */
  @property({ attribute: false }) versions: (() => Promise<readonly ShopVersion[]>) | undefined;

  @state() private found: readonly ShopVersion[] | undefined;
  @state() private fault = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('versions') || changed.has('now')) void this.#find();
  }

  protected override render(): TemplateResult {
    if (this.fault !== '') {
      return html`<p>The earlier versions can’t be read now. (${this.fault})</p>`;
    }
    if (!this.found) return html`<p>Looking for earlier versions …</p>`;
    if (this.found.length === 0) {
      return html`<p>None yet. Each change leaves here what it replaces: the last twenty, and the last one of each earlier day.</p>`;
    }
    return html`<ol aria-label="Earlier versions">
      ${versionRows(this.now, this.found).map((row) => this.#row(row))}
    </ol>`;
  }

  #row({ version, difference }: VersionRow): TemplateResult {
    const when = timeOf(version.aside);
    const { shop: id } = this;
    return html`<li>
      <p>
        <time datetime=${new Date(version.aside).toISOString()}>${when}</time>
        <span class="difference">${difference}</span>
      </p>
      <div class="actions">
        <button
          type="button"
          aria-label="Go back to this: ${when}"
          @click=${() => this.dispatchEvent(new ShelfEvent({ kind: 'restore', id, version }))}
        >
          <span>Go back to this</span>
        </button>
        <button
          type="button"
          aria-label="Save as a file: ${when}"
          @click=${() => this.dispatchEvent(new ShelfEvent({ kind: 'download version', version }))}
        >
          <span>Save as a file</span>
        </button>
      </div>
    </li>`;
  }

  async #find(): Promise<void> {
    try {
      this.found = await this.versions?.();
    } catch (error) {
      this.fault = error instanceof Error ? error.message : String(error);
    }
  }
}

function timeOf(written: number): string {
  return new Date(written).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'medium' });
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-version-list': VersionList;
  }
}
