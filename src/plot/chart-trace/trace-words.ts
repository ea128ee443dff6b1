// What is said while a chart is traced: what comes next, and what each mark is called.

import type { UnitSystem } from '../../units/quantity.ts';
import type { AxisName } from './chart-mapping.ts';
import { faultWords } from './fault-words.ts';
import { type MarkName, nextMark, nextValue, type TracedChart } from './traced-chart.ts';
import { faultOf, tracedValues } from './traced-values.ts';
import { unitWords } from './unit-words.ts';

/** How many points make a curve at least. */
export const LEAST_POINTS = 2;

const ORDER = ['first', 'second'] as const;

/**
 * What a mark is called.
 *
 * @param mark - a mark of an axis, or a point
 * @returns 'first mark of the flow axis', or 'point 3'
 */
export function markWords(mark: MarkName): string {
  if (mark.kind === 'point') return `point ${mark.index + 1}`;
  return `${ORDER[mark.index]} mark of the ${mark.axis} axis`;
}

/**
 * A mark within a sentence.
 *
 * @param mark - a mark of an axis, or a point
 * @returns 'the first mark of the flow axis', or 'point 3'
 */
export function theMark(mark: MarkName): string {
  return mark.kind === 'point' ? markWords(mark) : `the ${markWords(mark)}`;
}

/**
 * What the picture is called for those who hear it, with what its keys do.
 *
 * @param held - the mark that the keys move, if one is held
 * @param next - what Enter sets otherwise
 * @returns sentences
 */
export function pictureWords(held: MarkName | undefined, next: MarkName | undefined): string {
  if (!held) {
    return `Picture of the chart. Arrow keys move a cross, by ten pixels with Shift; Enter sets ${next ? theMark(next) : 'the next mark'}.`;
  }
  const away = held.kind === 'point' ? ', Delete takes it away' : '';
  return `Picture of the chart. Arrow keys move ${theMark(held)}, by ten pixels with Shift; Enter lets go of it${away}.`;
}

/**
 * What is to be done next, or what is in the way.
 *
 * @param chart - the chart
 * @param units - the units of the page
 * @returns a sentence
 */
export function nextStep(chart: TracedChart, units: UnitSystem): string {
  const fault = faultOf(chart);
  if (fault) return faultWords(fault);
  const value = nextValue(chart);
  if (value) {
    const unit = unitWords(chart.axes[value.axis], value.axis, units);
    return `Type the ${value.axis} that the chart shows at the ${markWords(value)}, in ${unit}.`;
  }
  const next = nextMark(chart);
  if (next.kind === 'axis') {
    return next.index === 0
      ? `Set the ${markWords(next)}: press the picture on that axis where a ${next.axis} is written.`
      : `Set the ${markWords(next)}: press where another ${next.axis} is written, far from the first.`;
  }
  const astray = astrayWords(chart);
  if (astray !== '') return astray;
  const count = chart.points.length;
  if (count < LEAST_POINTS)
    return 'Press along the curve to set points, more of them where it bends.';
  return `${count} points are set. Set more, move them, or use them.`;
}

/**
 * What an axis is called over its fields.
 *
 * @param axis - which
 * @returns its name with a capital
 */
export function axisWords(axis: AxisName): string {
  return axis === 'flow' ? 'Flow axis' : 'Pressure axis';
}

function astrayWords(chart: TracedChart): string {
  const values = tracedValues(chart);
  for (const axis of ['flow', 'pressure'] as const) {
    const astray = values.findIndex((value) => value[axis] < 0);
    if (astray >= 0) {
      return `Point ${astray + 1} lies at a ${axis} below 0. Move it, or check the marks of the ${axis} axis.`;
    }
  }
  return '';
}
