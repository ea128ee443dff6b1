// A test of one's own as a table that leaves the page: what each throttle setting was reduced to.

import type { ReducedSetting } from '../curve/throttle-test/reduce-setting.ts';
import { settingWords } from '../state/throttle-test/setting-words.ts';
import { formatQuantity } from '../units/format.ts';
import { type Quantity, unitLabel, type UnitSystem } from '../units/quantity.ts';
import type { PlotTable } from './plot-table.ts';

/** Of a setting without a figure. */
const NONE = '–';

/**
 * Writes the table.
 *
 * @param settings - the reduced settings, in the order of the sheet
 * @param units - the units to write in
 * @returns a row for each; one that is no point says why in its remark
 */
export function testFigures(settings: readonly ReducedSetting[], units: UnitSystem): PlotTable {
  const number = (quantity: Quantity, si: number | undefined) =>
    si === undefined ? NONE : formatQuantity(quantity, units, si).number;
  const pressure = unitLabel('pressure', units);
  const flow = unitLabel('flow', units);
  return {
    caption: 'What the settings of the test come to',
    columns: [
      { name: 'Setting' },
      { name: 'Suction at the tap', unit: pressure },
      { name: 'Mean speed', unit: unitLabel('velocity', units) },
      { name: 'Velocity pressure', unit: pressure },
      { name: 'Flow', unit: flow },
      { name: 'Flow, more or less', unit: flow },
      { name: 'Total suction', unit: pressure },
      { name: 'Total suction, more or less', unit: pressure },
      { name: 'Remark' },
    ],
    rows: settings.map((setting, i) => {
      const steps = setting.kind === 'incomplete' ? undefined : setting.steps;
      const doubt = setting.kind === 'point' ? setting.uncertainty : undefined;
      return [
        `${i + 1}`,
        number('pressure', steps?.static),
        number('velocity', steps && steps.flow / steps.area),
        number('pressure', steps?.velocityPressure),
        number('flow', steps?.flow),
        number('flow', doubt?.flow),
        number('pressure', steps?.suction),
        number('pressure', doubt?.suction),
        setting.kind === 'point' ? '' : settingWords(setting, units),
      ];
    }),
  };
}
