// Reading the plot in which a curve is entered, and its figures as a table: both lines at round flows.

import { availableSuction } from '../curve/collector-curve.ts';
import { valueAt } from '../math/hermite.ts';
import { formatQuantity } from '../units/format.ts';
import { unitLabel, type UnitSystem } from '../units/quantity.ts';
import type { CurveRule, EnteredCurve } from './curve-plot.ts';
import { roundFlows } from './operating-lines.ts';
import type { PlotTable } from './plot-table.ts';
import type { Readable, ReadLine } from './reading.ts';

const STOPS = 60;
const ROWS = 12;

/**
 * What can be read off the plot.
 *
 * @param curve - what is plotted
 * @param rule - frame and axes
 * @param units - the units to speak in
 * @returns the line as entered, and what the ducts get
 */
export function curveReading(
  curve: EnteredCurve,
  { frame, size }: CurveRule,
  units: UnitSystem,
): Readable {
  const flows = roundFlows(units, frame.flowEnd, STOPS, curve.point);
  const line = (name: string, pressureAt: (flow: number) => number): ReadLine => {
    const stops = flows
      .map((flow) => ({ flow, pressure: pressureAt(flow) }))
      .filter(({ pressure }) => pressure >= 0 && pressure <= frame.pressureEnd);
    return {
      name,
      places: stops.map(({ flow, pressure }) => ({ x: frame.x(flow), y: frame.y(pressure) })),
      read: (stop) => {
        const { flow, pressure } = stops[stop]!;
        const remark = remarkAt(curve, flow);
        return {
          figures: [
            formatQuantity('flow', units, flow).text,
            formatQuantity('pressure', units, pressure).text,
          ],
          ...(remark === '' ? {} : { remark }),
        };
      },
    };
  };
  const { entered, available } = curve;
  const lines = [
    line('as entered', (flow) => valueAt(entered, flow)),
    ...(available ? [line('what the ducts get', (flow) => availableSuction(available, flow))] : []),
  ];
  return {
    lines: lines.filter(({ places }) => places.length > 0),
    page: { ...frame.inner, top: 2, right: size.width - 2 },
    obstacles: { strokes: [], boxes: [] },
  };
}

/**
 * The figures of the plot.
 *
 * @param curve - what is plotted
 * @param flowEnd - where the flow axis ends [m³/s]
 * @param units - the units to write in
 * @returns the table
 */
export function curveTable(curve: EnteredCurve, flowEnd: number, units: UnitSystem): PlotTable {
  const { entered, available, point } = curve;
  const pressure = unitLabel('pressure', units);
  const write = (value: number) => formatQuantity('pressure', units, value).number;
  return {
    caption: 'The collector’s curve, as entered and as the ducts get it',
    columns: [
      { name: 'air flow', unit: unitLabel('flow', units) },
      { name: 'as entered', unit: pressure },
      ...(available
        ? [
            { name: 'what the ducts get', unit: pressure },
            { name: 'between them', unit: pressure },
          ]
        : []),
      { name: 'remark' },
    ],
    rows: roundFlows(units, flowEnd, ROWS, point).map((flow) => {
      const before = valueAt(entered, flow);
      const after = available ? availableSuction(available, flow) : undefined;
      return [
        formatQuantity('flow', units, flow).number,
        write(before),
        ...(after === undefined ? [] : [write(after), write(before - after)]),
        remarkAt(curve, flow),
      ];
    }),
  };
}

function remarkAt({ entered, point }: EnteredCurve, flow: number): string {
  const [first = 0, last = 0] = [entered.x[0], entered.x.at(-1)];
  const isOutside = flow < first || flow > last;
  return [
    ...(flow === point?.flow ? ['operating point'] : []),
    ...(isOutside ? ['only continued, outside the points'] : []),
  ].join('; ');
}
