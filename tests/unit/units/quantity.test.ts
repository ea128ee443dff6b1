import { describe, expect, it } from 'vitest';
import {
  fromDisplay,
  QUANTITY_NAMES,
  shownUnit,
  toDisplay,
  typicalAmount,
  unitLabel,
} from '../../../src/units/quantity.ts';

describe('the kinds of quantity', () => {
  it('measure the same thing in either system', () => {
    for (const quantity of QUANTITY_NAMES) {
      const us = shownUnit(quantity, 'us').dimension;
      expect(shownUnit(quantity, 'metric').dimension, quantity).toBe(us);
    }
  });

  it('carry the labels of the trade', () => {
    const labels = (system: 'us' | 'metric') =>
      (['flow', 'velocity', 'pressure', 'length', 'diameter', 'temperature', 'power'] as const).map(
        (quantity) => unitLabel(quantity, system),
      );
    expect(labels('us')).toEqual(['cfm', 'ft/min', 'in. w.g.', 'ft', 'in.', '°F', 'hp']);
    expect(labels('metric')).toEqual(['m³/h', 'm/s', 'Pa', 'm', 'mm', '°C', 'kW']);
  });

  it('agree on one amount whichever system it is said in', () => {
    for (const quantity of QUANTITY_NAMES) {
      const amount = typicalAmount(quantity);
      for (const system of ['us', 'metric'] as const) {
        const back = fromDisplay(quantity, system, toDisplay(quantity, system, amount));
        expect(Math.abs(back - amount), quantity).toBeLessThanOrEqual(1e-14 * Math.abs(amount));
      }
    }
  });
});
