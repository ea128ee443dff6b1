// A part of the collector whose loss is known in one way or another: its filter, its separator.

import { html, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import type { Choice } from '../choice-field/choice-field.ts';
import '../choice-field/choice-field.ts';
import { amountField } from './amount-field.ts';
import type { Amount } from './collector-amounts.ts';

/** What the group shows and how its changes are made. */
export interface KnownGroup {
  readonly heading: string;
  readonly about: string;
  readonly kinds: readonly Choice[];
  readonly kind: string;
  readonly choose: (kind: string) => void;
  readonly amounts: readonly Amount[];
  readonly units: UnitSystem;
}

/**
 * Writes the group.
 *
 * @param group - what is known of the part
 * @returns the template
 */
export function knownGroup(group: KnownGroup): TemplateResult {
  const { heading, about, kinds, kind, choose, amounts, units } = group;
  return html`<div class="group">
    <h3>${heading}</h3>
    <p class="about">${about}</p>
    <div class="fields">
      <dc-choice-field
        class="long"
        label="Known"
        .choices=${kinds}
        .value=${kind}
        @dc-choice=${({ value }: ChoiceEvent) => choose(value)}
      ></dc-choice-field>
      ${amounts.map((amount) => amountField(units, amount))}
    </div>
  </div>`;
}
