// The collector: its curve and what that means, how it runs, its filter and its separator. (A little over
// 200 lines: five groups of fields.)

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { pressureTerms } from '../../curve/pressure-terms.ts';
import { replaceCurve, setCollector } from '../../shop/edits/edit-shop.ts';
import { exampleCurves } from '../../shop/example-curves.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { editedCurve } from '../../state/collector/edited-curve.ts';
import {
  type Filter,
  FILTER_KINDS,
  filterAs,
  type FilterKind,
} from '../../state/collector/filter-choice.ts';
import type { Session } from '../../state/session.ts';
import { testAirOf } from '../../state/throttle-test/edit-test.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import type { Choice } from '../choice-field/choice-field.ts';
import '../choice-field/choice-field.ts';
import type { CurveEffect } from '../curve-editor/curve-editor.ts';
import '../curve-editor/curve-editor.ts';
import type { CurveEvent } from '../curve-editor/curve-event.ts';
import type { TakeCurveEvent } from '../curve-shelf/curve-shelf-event.ts';
import '../effect-line/effect-line.ts';
import '../power-table/power-table.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import { amountField, openAmountField } from './amount-field.ts';
import { ARRANGEMENTS, arrangementKey, arrangementOf } from './arrangement-choice.ts';
import { filterAmounts, separatorAmounts } from './collector-amounts.ts';
import { knownGroup } from './known-group.ts';
import { MotorController, type MotorWords } from './motor-controller.ts';
import { effort } from '../effort.ts';
import { motorGroup } from './motor-group.ts';

const OWN = 'own';
const SEPARATORS = [
  { value: 'none', words: 'none, or not known' },
  { value: 'coefficient', words: 'by its loss coefficient' },
];
/** A cyclone of a small unit (common practice, no source): 4 velocity pressures in a 6 in. inlet. */
const USUAL_SEPARATOR = { kind: 'coefficient', coefficient: 4, diameter: 0.1524 } as const;

/** @element dc-collector-panel */
@customElement('dc-collector-panel')
export class CollectorPanel extends LitElement {
  static override styles = [baseStyles, panelFormStyles];

  /** All but the curve's plot comes a little after it while a point of the curve is moved. */
  readonly #session = new SessionController(this, readCollector, { turn: 1 });
  readonly #effect = new SessionController(this, readEffect, 'when seen');

  /** Asks for every named state of the gates, so it waits until nothing changes any more. */
  readonly #motor = new MotorController(this);

  readonly #examples = exampleCurves();
  #choices: { readonly own: string; readonly list: readonly Choice[] } | undefined;

  protected override render(): TemplateResult {
    const view = this.#session.value;
    const now = this.#effect.value;
    if (!view || !now) return html`${nothing}`;
    const { session, units } = view;
    const motor = this.#motor.wordsFor(session);
    return html`<dc-effect-line></dc-effect-line>
      <div class="group">
        ${guard([view], () => this.#choice(view))}
        <dc-curve-editor
          .curve=${now.curve}
          .units=${units}
          .effect=${now.effect}
          .air=${view.testAir}
          @dc-curve=${({ curve, mergeKey }: CurveEvent) =>
            effort.measure(() =>
              session.edit(replaceCurve(editedCurve(curveOf(session), curve)), mergeKey),
            )}
        ></dc-curve-editor>
        ${guard([view], () => shelf(view))}
      </div>
      ${guard([view, motor], () => this.#fields(view, motor))}`;
  }

  #fields({ session, collector, units }: CollectorView, motor: MotorWords): TemplateResult {
    return html`${this.#running(session, collector, units)}
      ${motorGroup({
        curve: collector.curve,
        units,
        words: motor,
        amount: (amount) => openAmountField(units, amount),
        set: (curve) => session.edit(replaceCurve(editedCurve(collector.curve, curve))),
      })}
      ${this.#filter(session, collector, units)} ${this.#separator(session, collector, units)}`;
  }

  /** The examples, and the curve itself where it is none; the very same list while that holds. */
  #choicesFor(curve: Curve, isExample: boolean): readonly Choice[] {
    const own = isExample ? '' : curve.name;
    if (this.#choices?.own === own) return this.#choices.list;
    const examples = this.#examples.map(({ id, name }) => ({ value: id ?? name, words: name }));
    const list = own === '' ? examples : [{ value: OWN, words: own }, ...examples];
    this.#choices = { own, list };
    return list;
  }

  #choice({ session, collector: { curve } }: CollectorView): TemplateResult {
    const example = this.#examples.find(({ id }) => id === curve.id);
    return html`<h3>Its curve</h3>
      <p class="about">
        ${curve.note ?? 'Points of your own.'}
        ${example ? 'Change any of them, and it becomes a curve of your own.' : nothing}
      </p>
      <div class="fields">
        <dc-choice-field
          class="long"
          label="Curve"
          .choices=${this.#choicesFor(curve, example !== undefined)}
          .value=${example?.id ?? OWN}
          @dc-choice=${({ value }: ChoiceEvent) => this.#onExample(session, value)}
        ></dc-choice-field>
      </div>`;
  }

  #running(session: Session, collector: Collector, units: UnitSystem): TemplateResult {
    const { speedRatio = 1, wheelRatio = 1, curve, arrangement } = collector;
    const hint = (quantity: Quantity, ratio: number, whole: number | undefined) =>
      whole === undefined ? '' : `${formatQuantity(quantity, units, ratio * whole).text} here`;
    return html`<div class="group">
      <h3>How it runs</h3>
      <p class="about">Flow goes with the speed and pressure with its square. On 50 Hz a 60 Hz motor runs at 5/6, 83.3 %.</p>
      <div class="fields">
        ${amountField(units, {
          label: 'Speed, of the speed of its curve',
          quantity: 'fraction',
          value: speedRatio,
          low: 0.05,
          high: 5,
          hint: hint('rotation', speedRatio, curve.speed),
          take: (ratio) => session.edit(setCollector({ speedRatio: ratioOrNone(ratio) })),
        })}
        ${amountField(units, {
          label: 'Wheel, of the wheel of its curve',
          quantity: 'fraction',
          value: wheelRatio,
          low: 0.2,
          high: 5,
          hint: hint('diameter', wheelRatio, curve.wheelDiameter),
          take: (ratio) => session.edit(setCollector({ wheelRatio: ratioOrNone(ratio) })),
        })}
        <dc-choice-field
          label="How many, and how they stand"
          .choices=${ARRANGEMENTS}
          .value=${arrangementKey(arrangement)}
          .hint=${arrangement ? 'each with its own filter and separator' : ''}
          @dc-choice=${({ value }: ChoiceEvent) =>
            session.edit(setCollector({ arrangement: arrangementOf(value) }))}
        ></dc-choice-field>
      </div>
    </div>`;
  }

  #filter(session: Session, { curve, filter }: Collector, units: UnitSystem): TemplateResult {
    const set = (next: Filter) => session.edit(setCollector({ filter: next }));
    return knownGroup({
      heading: 'Its filter',
      about: curve.includes.filter
        ? 'The points hold the clean filter, so only what blinding adds is taken off.'
        : 'Its loss grows with the flow. How blind it is now stands under “Air, filter and range”.',
      kinds: FILTER_KINDS,
      kind: filter.kind,
      choose: (kind) => set(filterAs(filter, kind as FilterKind)),
      amounts: filterAmounts(filter, set),
      units,
    });
  }

  #separator(session: Session, { curve, separator }: Collector, units: UnitSystem): TemplateResult {
    const set = (next: Collector['separator']) => session.edit(setCollector({ separator: next }));
    return knownGroup({
      heading: 'Its separator',
      about: curve.includes.separator
        ? 'The points hold the separator, so nothing more is taken off, whatever stands here.'
        : 'A cyclone or a drum before the fan. Its loss grows with the square of the flow.',
      kinds: SEPARATORS,
      kind: separator.kind,
      choose: (kind) => set(kind === 'none' ? { kind: 'none' } : USUAL_SEPARATOR),
      amounts: separatorAmounts(separator, set),
      units,
    });
  }

  #onExample(session: Session, id: string): void {
    const example = this.#examples.find((each) => each.id === id);
    if (example) session.edit(replaceCurve(example));
  }
}

type CollectorView = ReturnType<typeof readCollector>;

function readCollector(session: Session) {
  const { collector, air } = session.shop.value;
  return { session, collector, units: session.units.value, testAir: testAirOf(air) };
}

function readEffect(session: Session) {
  const { collector } = session.shop.value;
  const { curve, air } = session.model.value;
  const point = session.report.value.operatingPoint ?? undefined;
  const effect: CurveEffect = {
    available: curve,
    point,
    terms: point && pressureTerms(collector, air, point.flow),
  };
  return { curve: collector.curve, effect };
}

/** As it is by now, which may be more than is drawn of it. */
function curveOf(session: Session): Curve {
  return session.shop.peek().collector.curve;
}

function shelf({ session, collector: { curve } }: CollectorView): TemplateResult {
  return html`<details @toggle=${() => void import('../curve-shelf/curve-shelf.ts')}>
    <summary>Shelf of curves: keep, take, save and take in</summary>
    <dc-curve-shelf
      .curve=${curve}
      @dc-take-curve=${(event: TakeCurveEvent) => session.edit(replaceCurve(event.curve))}
    ></dc-curve-shelf>
  </details>`;
}

/** A ratio of 1 is not written. */
function ratioOrNone(ratio: number): number | undefined {
  return ratio === 1 ? undefined : ratio;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collector-panel': CollectorPanel;
  }
}
