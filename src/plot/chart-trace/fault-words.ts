// What is wrong with the marks of a chart, in words: once as what is to be done next, and once at the
// field where a value was typed.

import type { UnitSystem } from '../../units/quantity.ts';
import { type AxisName, type MarksFault, valuesFault } from './chart-mapping.ts';
import type { TracedAxis } from './traced-chart.ts';
import { amountWords } from './unit-words.ts';

/**
 * What is wrong with the marks of the axes.
 *
 * @param fault - why the chart can't be read
 * @returns a sentence with what would do
 */
export function faultWords(fault: MarksFault): string {
  switch (fault.kind) {
    case 'too near': {
      const apart = Math.round(fault.apart);
      const pixels = apart === 1 ? '1 pixel' : `${apart} pixels`;
      return `Both marks of the ${fault.axis} axis lie at nearly the same place, ${pixels} apart. Move one of them far from the other.`;
    }
    case 'same value':
      return `Both marks of the ${fault.axis} axis stand for the same ${fault.axis}. Mend one of them, beside the picture.`;
    case 'not above zero':
      return `The ${fault.axis} axis is logarithmic and has no zero. Mend its ${fault.index === 0 ? 'first' : 'second'} mark, beside the picture.`;
    case 'parallel':
      return 'The two axes run the same way. Check that two marks lie along the flow axis and two along the pressure axis.';
    default:
      return fault satisfies never;
  }
}

/**
 * What is wrong with the value of a mark, for the field where it was typed.
 *
 * @param name - which axis
 * @param axis - the axis
 * @param index - which of its marks
 * @param units - the units of the page
 * @returns a sentence with the value and what would do; empty where nothing is wrong
 */
export function valueProblem(
  name: AxisName,
  axis: TracedAxis,
  index: 0 | 1,
  units: UnitSystem,
): string {
  const [first, second] = axis.marks;
  const fault = valuesFault(name, axis.scale, [first.value, second.value]);
  const value = axis.marks[index].value;
  if (!fault || value === undefined) return '';
  const amount = amountWords(axis, name, value, units);
  switch (fault.kind) {
    case 'not above zero':
      return fault.index === index
        ? `${amount} has no place on a logarithmic axis. Mark a ${name} above 0 and type that, or choose evenly spaced.`
        : '';
    case 'same value':
      return index === 1
        ? `${amount} is what the first mark stands for already. Type what the chart shows at this mark.`
        : '';
    default:
      return fault satisfies never;
  }
}
