// The sheet's list of what was assumed, each figure with where it comes from.

import { html, type TemplateResult } from 'lit';
import type { AssumptionGroup } from '../../state/assumptions/assumption.ts';
import { keptTogether } from './sheet-group.ts';
import { unbroken } from '../unbroken.ts';

/**
 * Writes the list.
 *
 * @param groups - assumptions by what they are about
 * @returns a part of the sheet
 */
export function sheetAssumptions(groups: readonly AssumptionGroup[]): TemplateResult {
  return html`<section>
    <h2>What was assumed, and where each figure comes from</h2>
    <table class="assumed">
      <colgroup>
        <col class="what" />
        <col class="figure-column" />
        <col />
      </colgroup>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Figure</th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      ${groups.map(
        ({ heading, rows }) => html`<tbody class=${keptTogether(rows.length)}>
          <tr>
            <th class="set" scope="rowgroup" colspan="3">${heading}</th>
          </tr>
          ${rows.map(({ what, value, source, sureness }) => {
            const words = sureness === 'entered' ? 'entered for this shop' : sureness;
            return html`<tr>
              <th scope="row">${sizesWhole(unbroken(what))}</th>
              <td>${unbroken(value)}</td>
              <td>${source}${source === '' ? '' : ' · '}${words}</td>
            </tr>`;
          })}
        </tbody>`,
      )}
    </table>
  </section>`;
}

/** A size of pipe stays with its unit at the end of a line. */
function sizesWhole(words: string): string {
  return words.replace(/(\d) (in\.|mm)/g, '$1\u00a0$2');
}
