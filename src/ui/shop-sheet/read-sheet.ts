// Everything that the sheet shows of a session, read once.

import { plotExtent } from '../../plot/plot-extent.ts';
import { assumptions } from '../../state/assumptions/assumptions.ts';
import { cutListView } from '../../state/cut-list/cut-list-view.ts';
import { travelsOf } from '../../state/gate-positions.ts';
import { systemKnots } from '../../state/plot-view.ts';
import { runView } from '../../state/run-view.ts';
import type { Session } from '../../state/session.ts';
import { sheetStates } from '../../state/sheet-view.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel } from '../../units/quantity.ts';

/** What a sheet is written from. */
export type Sheet = ReturnType<typeof readSheet>;

/**
 * Reads a session for its sheet.
 *
 * @param session - the session
 * @param printed - when it is printed
 * @returns all that the sheet shows
 */
export function readSheet(session: Session, printed: Date) {
  const shop = session.shop.peek();
  const model = session.model.peek();
  const report = session.report.peek();
  const units = session.units.peek();
  const extent = plotExtent(model.curve);
  const travels = travelsOf(shop.drops, session.gates.peek());
  const point = report.operatingPoint ?? undefined;
  const { low, high } = shop.carryingRange;
  return {
    name: shop.name,
    note: shop.note,
    printed: new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' }).format(printed),
    sentence: session.sentence.peek(),
    units,
    air: formatQuantity('density', units, model.air.density).text,
    range: `${formatQuantity('velocity', units, low).number} to ${formatQuantity('velocity', units, high).text}`,
    run: {
      sections: runView(shop, model, report, units),
      speedUnit: unitLabel('velocity', units),
    },
    plot: {
      curve: model.curve,
      collector: shop.collector.curve.name,
      system: systemKnots(model, travels, report, extent.flow, extent.pressure),
      point,
      instead: report.outcome,
    },
    states: sheetStates(shop, units),
    cuts: cutListView(shop, units),
    assumptions: assumptions(shop, model.air, units),
  };
}
