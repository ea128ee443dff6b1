// The collector's motor: its nameplate, what is known of the power it takes, and its load.

import { html, nothing, type TemplateResult } from 'lit';
import {
  MOTOR_KINDS,
  type MotorKind,
  motorAs,
  motorKind,
} from '../../state/collector/motor-choice.ts';
import { withOrWithout } from '../../state/with-or-without.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import type { PowerEvent } from '../power-table/power-event.ts';
import type { OpenAmount } from './collector-amounts.ts';
import { unbroken } from '../unbroken.ts';

/** What the group shows and how its changes are made. */
export interface MotorGroup {
  readonly curve: Curve;
  readonly units: UnitSystem;
  readonly words: { readonly text: string; readonly isOver: boolean };
  readonly amount: (amount: OpenAmount) => TemplateResult;
  readonly set: (curve: Curve) => void;
}

/**
 * Writes the group.
 *
 * @param group - the curve and what is done with it
 * @returns the template
 */
export function motorGroup({ curve, units, words, amount, set }: MotorGroup): TemplateResult {
  const kind = motorKind(curve);
  return html`<div class="group">
    <h3>Its motor</h3>
    <p class=${words.isOver ? 'about over' : 'about'} role="status">${words.isOver ? html`<b>Overloaded.</b> ` : nothing}${unbroken(words.text)}</p>
    <div class="fields">
      <dc-choice-field
        class="long"
        label="Power known"
        .choices=${MOTOR_KINDS}
        .value=${kind}
        @dc-choice=${({ value }: ChoiceEvent) => set(motorAs(curve, value as MotorKind))}
      ></dc-choice-field>
      ${amount({
        label: 'Nameplate of the motor',
        quantity: 'power',
        value: curve.nameplate,
        low: 1,
        high: 1e6,
        optional: true,
        take: (nameplate) => set(withOrWithout(curve, 'nameplate', nameplate)),
      })}
      ${
        kind === 'efficiency'
          ? amount({
              label: 'Efficiency, air power over shaft power',
              quantity: 'fraction',
              value: curve.efficiency,
              low: 0.01,
              high: 1,
              hint: 'of the pressures as they are entered',
              take: (efficiency) => set(withOrWithout(curve, 'efficiency', efficiency)),
            })
          : nothing
      }
    </div>
    ${
      kind === 'points'
        ? html`<dc-power-table
            .power=${curve.power ?? []}
            .units=${units}
            @dc-power=${({ power }: PowerEvent) => set({ ...curve, power })}
          ></dc-power-table>`
        : nothing
    }
  </div>`;
}
