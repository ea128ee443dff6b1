// What the collector gives now, what it loses in itself, and what it gave before the last change:
// the effect of a condition in one line.

import type { Air } from '../../air/air.ts';
import { blindingOf, cleanResistance } from '../../curve/filter-resistance.ts';
import { velocityPressureFactor } from '../../curve/velocity-pressure-factor.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { StateReport } from '../../shop/state-report.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';

/** What the line is made of. */
export interface EffectFacts {
  readonly collector: Collector;
  readonly air: Air;
  readonly report: StateReport;
  /** The state before the last change, where there was one. */
  readonly before: StateReport | undefined;
}

/**
 * The effect in words.
 *
 * @param facts - the collector, its air, and the state
 * @param system - the units to speak in
 * @returns one or two sentences
 */
export function effectWords(facts: EffectFacts, system: UnitSystem): string {
  const { report, before } = facts;
  const point = report.operatingPoint;
  if (!point) return `The collector gives no suction: ${report.outcome}.`;
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  const former = before?.operatingPoint;
  const was = (quantity: Quantity, si: number | undefined) =>
    si === undefined ? '' : ` (before, ${show(quantity, si)})`;
  const flow = show('flow', point.flow) + was('flow', former?.flow);
  const suction = show('pressure', point.suction) + was('pressure', former?.suction);
  const losses = ownLosses(facts, point.flow).map(
    ([what, loss]) => `the ${what} takes ${show('pressure', loss)}`,
  );
  const given = `The collector moves ${flow} and leaves ${suction} for the ducts.`;
  if (losses.length === 0) return given;
  // A unit may end with the full stop already.
  return `${given} On top of that ${losses.join(' and ')}.`.replace(/\.\.$/, '.');
}

/** What the filter and the separator lose at a flow [m³/s], as far as they are known [Pa]. */
function ownLosses({ collector, air }: EffectFacts, flow: number): [what: string, loss: number][] {
  const { filter, separator, curve } = collector;
  const filtering = blindingOf(filter) * cleanResistance(filter, air.viscosity) * flow;
  const isTaken = separator.kind !== 'none' && !curve.includes.separator;
  const separating = isTaken
    ? separator.coefficient * velocityPressureFactor(air.density, separator.diameter) * flow ** 2
    : 0;
  const losses: [string, number][] = [
    ['filter', filtering],
    ['separator', separating],
  ];
  return losses.filter(([, loss]) => loss > 0);
}
