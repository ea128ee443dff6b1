// Other ways to the points of a curve than typing them, each folded away and loaded when it is wanted.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CurvePoint } from '../../curve/curve-data.ts';
import type { TestAir } from '../../curve/throttle-test/throttle-test.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { TracedEvent } from '../chart-trace/traced-event.ts';
import { PointsEvent } from '../points-table/points-event.ts';
import { baseStyles } from '../styles/base.styles.ts';

/**
 * @element dc-curve-sources
 * @fires dc-points - these are to be the points of the curve
 * @fires dc-test-sheet - something was typed into the worksheet, which is to be kept
 * @fires dc-test-points - the points of the worksheet are to be those of the curve
 */
@customElement('dc-curve-sources')
export class CurveSources extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }
    `,
  ];

  /** The points that the curve has now. */
  @property({ attribute: false }) points: readonly CurvePoint[] = [];
  @property({ attribute: false }) units: UnitSystem = 'us';

  /** The worksheet that goes with the curve, if one was begun, and the air that a new one begins with. */
  @property({ attribute: false }) test: TestSheet | undefined;
  @property({ attribute: false }) air: TestAir | undefined;

  protected override render(): TemplateResult {
    return html`<details @toggle=${() => void import('../chart-trace/chart-trace.ts')}>
      <summary>From a picture of a chart</summary>
      <dc-chart-trace
        .units=${this.units}
        @dc-traced=${(event: TracedEvent) => this.#onTraced(event)}
      ></dc-chart-trace>
    </details>
    <details @toggle=${() => void import('../test-worksheet/test-worksheet.ts')}>
      <summary>From a test of your own</summary>
      <dc-test-worksheet .units=${this.units} .test=${this.test} .air=${this.air}></dc-test-worksheet>
    </details>`;
  }

  #onTraced({ points, how }: TracedEvent): void {
    this.dispatchEvent(new PointsEvent(how === 'replace' ? points : [...this.points, ...points]));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-curve-sources': CurveSources;
  }
}
