// A collector with round numbers, for tests to vary.

import type { CollectorSpec } from '../../../src/curve/collector-spec.ts';
import type { CurveData } from '../../../src/curve/curve-data.ts';
import { TEST_VISCOSITY } from '../../../src/curve/filter-resistance.ts';

/** Air as on the chart: 1.2 kg/m³ at 20 °C. */
export const chartAir = { density: 1.2, viscosity: TEST_VISCOSITY, pressure: 101325 };

export const exampleCurve: CurveData = {
  basis: { kind: 'total' },
  includes: { filter: false, separator: false },
  density: 1.2,
  points: [
    { flow: 0, pressure: 2000 },
    { flow: 0.1, pressure: 2060 },
    { flow: 0.2, pressure: 2040 },
    { flow: 0.3, pressure: 1800 },
    { flow: 0.4, pressure: 1300 },
    { flow: 0.5, pressure: 500 },
  ],
};

/** The collector with nothing on it; `curve` and `rest` replace what they name. */
export function exampleSpec(
  rest: Omit<Partial<CollectorSpec>, 'curve'> = {},
  curve: Partial<CurveData> = {},
): CollectorSpec {
  return {
    curve: { ...exampleCurve, ...curve },
    filter: { kind: 'none' },
    separator: { kind: 'none' },
    ...rest,
  };
}
