// Points as they come from a spreadsheet or a chart's table: one a line, flow before pressure.

import type { CurvePoint } from '../curve/curve-data.ts';
import { parseQuantity } from '../units/parse-quantity.ts';
import type { Quantity, UnitSystem } from '../units/quantity.ts';

/** Between the cells of a line: tab, semicolon, or two spaces. */
const BETWEEN_CELLS = /\t|;| {2,}/;

/**
 * Reads pasted text as points. Lines that hold no two amounts, such as headings, are passed over. A
 * comma in a group of thousands is taken in its likelier sense.
 *
 * @param text - what was pasted
 * @param units - units of a plain number
 * @returns the points, in the order of the lines; undefined unless there are two or more
 */
export function pastedPoints(text: string, units: UnitSystem): readonly CurvePoint[] | undefined {
  const points = text.split(/\r?\n/).flatMap((line) => {
    const [first = '', second = ''] = line.trim().split(BETWEEN_CELLS);
    const flow = amountIn('flow', units, first);
    const pressure = amountIn('pressure', units, second);
    return flow === undefined || pressure === undefined ? [] : [{ flow, pressure }];
  });
  return points.length < 2 ? undefined : points;
}

function amountIn(quantity: Quantity, units: UnitSystem, text: string): number | undefined {
  const parsed = parseQuantity(quantity, units, text);
  if (parsed.kind === 'understood') return parsed.value;
  return parsed.kind === 'ambiguous' ? parsed.readings[0]?.value : undefined;
}
