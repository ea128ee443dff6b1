// What is said while a chart is traced: what comes next, what each mark is called, and what is wrong.

import type { AxisName, ChartMapping } from './chart-mapping.ts';
import {
  mappingOf,
  type MarkName,
  nextMark,
  nextValue,
  type TracedChart,
  tracedValues,
} from './traced-chart.ts';

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
 * What is to be done next, or what is in the way.
 *
 * @param chart - the chart
 * @returns a sentence
 */
export function nextStep(chart: TracedChart): string {
  const value = nextValue(chart);
  if (value) return `Type what the ${markWords(value)} stands for.`;
  const next = nextMark(chart);
  if (next.kind === 'axis') {
    const where = next.index === 0 ? 'where you can read a value' : 'far from the first';
    return `Set the ${markWords(next)}: a place ${next.index === 0 ? 'on it ' : ''}${where}.`;
  }
  const mapping = mappingOf(chart);
  if (mapping && mapping.kind !== 'ready') return mappingProblem(mapping);
  const astray = tracedValues(chart).findIndex(({ flow }) => flow < 0);
  if (astray >= 0) {
    return `Point ${astray + 1} lies at a flow below 0, where no air moves. Move it, or check the marks of the flow axis.`;
  }
  const count = chart.points.length;
  if (count < LEAST_POINTS) return 'Set points along the curve, more of them where it bends.';
  return `${count} points are set. Set more, move them, or use them.`;
}

/**
 * What is wrong with the marks of the axes.
 *
 * @param mapping - why the chart can't be read
 * @returns a sentence with what would do
 */
export function mappingProblem(mapping: Exclude<ChartMapping, { kind: 'ready' }>): string {
  switch (mapping.kind) {
    case 'too near':
      return `Both marks of the ${mapping.axis} axis lie at nearly the same place. Move one of them far from the other.`;
    case 'same value':
      return `Both marks of the ${mapping.axis} axis stand for the same ${mapping.axis}. Type the value of each.`;
    case 'not above zero':
      return `The ${mapping.axis} axis is logarithmic and has no zero. Mark two values above 0, or call it evenly spaced.`;
    case 'parallel':
      return 'The two axes run the same way. Check that two marks lie along the flow axis and two along the pressure axis.';
    default:
      return mapping satisfies never;
  }
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
