// What is typed of a collector's filter and separator: each kind of either has amounts of its own.

import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { Filter } from '../../state/collector/filter-choice.ts';
import type { Quantity } from '../../units/quantity.ts';

/** An amount that is typed: what it is, what it is now, and what its change does. */
export interface Amount {
  readonly label: string;
  readonly quantity: Quantity;
  readonly value: number | undefined;
  readonly low: number;
  readonly high: number;
  readonly hint?: string;
  readonly take: (value: number) => void;
}

/** An amount that may be left open. */
export interface OpenAmount extends Omit<Amount, 'take'> {
  /** Whether it may be emptied. */
  readonly optional?: true;
  readonly take: (value: number | undefined) => void;
}

type Separator = Collector['separator'];

/** The amounts of a separator; none where there is none. */
export function separatorAmounts(
  separator: Separator,
  set: (separator: Separator) => void,
): readonly Amount[] {
  if (separator.kind === 'none') return [];
  return [
    {
      label: 'Loss coefficient',
      quantity: 'coefficient',
      value: separator.coefficient,
      low: 0,
      high: 1000,
      hint: 'velocity pressures in its inlet',
      take: (coefficient) => set({ ...separator, coefficient }),
    },
    {
      label: 'Inside diameter of its inlet',
      quantity: 'diameter',
      value: separator.diameter,
      low: 0.01,
      high: 2,
      take: (diameter) => set({ ...separator, diameter }),
    },
  ];
}

/** The amounts of a filter, by the way in which it is known. */
export function filterAmounts(filter: Filter, set: (filter: Filter) => void): readonly Amount[] {
  switch (filter.kind) {
    case 'none':
      return [];
    case 'resistance':
      return [
        {
          label: 'Resistance',
          quantity: 'resistance',
          value: filter.resistance,
          low: 0,
          high: 1e7,
          take: (resistance) => set({ ...filter, resistance }),
        },
      ];
    case 'media':
      return [
        {
          label: 'Area of the media',
          quantity: 'area',
          value: filter.area,
          low: 0.001,
          high: 10_000,
          take: (area) => set({ ...filter, area }),
        },
        {
          label: 'Speed of air through clean media',
          quantity: 'velocity',
          value: filter.testVelocity,
          low: 1e-5,
          high: 100,
          hint: 'cfm per square foot is the same as ft/min',
          take: (testVelocity) => set({ ...filter, testVelocity }),
        },
        {
          label: 'At a pressure of',
          quantity: 'pressure',
          value: filter.testPressure,
          low: 0,
          high: 10_000,
          take: (testPressure) => set({ ...filter, testPressure }),
        },
      ];
    case 'measured':
      return [
        {
          label: 'Pressure across the clean filter',
          quantity: 'pressure',
          value: filter.pressure,
          low: 0,
          high: 50_000,
          take: (pressure) => set({ ...filter, pressure }),
        },
        {
          label: 'At a flow of',
          quantity: 'flow',
          value: filter.flow,
          low: 1e-4,
          high: 100,
          take: (flow) => set({ ...filter, flow }),
        },
      ];
    default:
      return filter satisfies never;
  }
}
