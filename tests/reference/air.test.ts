// The air against published figures. The figures, their sources, how each was obtained and how far
// the two may differ stand in shared/checks-air.json.
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks-air.json' with { type: 'json' };
import { pressureAtAltitude } from '../../src/air/altitude-pressure.ts';
import { moistAirDensity } from '../../src/air/moist-air.ts';
import { roomAir } from '../../src/air/room-air.ts';
import { STANDARD_DENSITY, velocityOfPressure } from '../../src/air/velocity-pressure.ts';
import { sutherlandViscosity } from '../../src/air/viscosity.ts';
import { fromDisplay, toDisplay } from '../../src/units/quantity.ts';

type Row = (typeof checks.rows)[number];

const sourceOf = (row: Row) => checks.sources.find((source) => source.id === row.source);

/** An input of a row, which must be there. */
function given(
  row: Row,
  key: 'altitude' | 'temperature' | 'humidity' | 'humidityRatio' | 'pressure',
) {
  const value = row[key];
  if (value === undefined) throw new Error(`${row.name} lacks ${key}`);
  return value;
}

/** ft/min at which air of a density [kg/m³] has a velocity pressure of one inch of water. */
const speedOfOneInch = (density: number) =>
  toDisplay('velocity', 'us', velocityOfPressure(density, fromDisplay('pressure', 'us', 1)));

/** cfm that one horsepower moves through one inch of water, without loss. */
const flowOfOneHorsepower = () =>
  toDisplay('flow', 'us', fromDisplay('power', 'us', 1) / fromDisplay('pressure', 'us', 1));

const constants: Readonly<Record<string, () => number>> = {
  'velocity of 1 in. w.g. in air of 1 lb/ft³, in ft/min': () =>
    speedOfOneInch(fromDisplay('density', 'us', 1)),
  'flow in cfm that takes 1 hp through 1 in. w.g.': flowOfOneHorsepower,
  'velocity of 1 in. w.g. in standard air, in ft/min': () => speedOfOneInch(STANDARD_DENSITY),
};

function ours(row: Row): number | undefined {
  switch (row.kind) {
    case 'room':
      return roomAir({
        altitude: given(row, 'altitude'),
        temperature: given(row, 'temperature'),
        humidity: given(row, 'humidity'),
      }).density;
    case 'damp air':
      return moistAirDensity(
        given(row, 'temperature'),
        given(row, 'humidityRatio'),
        given(row, 'pressure'),
      );
    case 'viscosity':
      return sutherlandViscosity(given(row, 'temperature'));
    case 'pressure at a height':
      return pressureAtAltitude(given(row, 'altitude'));
    case 'constant':
      return constants[row.name]?.();
    case 'standard density':
      return toDisplay('density', 'us', STANDARD_DENSITY);
    default:
      return undefined;
  }
}

describe('air', () => {
  it.each(checks.rows)('$kind, $name: $expected ($source)', (row) => {
    expect(sourceOf(row), 'the row names a source of the file').toBeDefined();
    const value = ours(row);
    if (value === undefined) throw new Error(`nothing computes ${row.name}`);
    expect(Math.abs(value - row.expected)).toBeLessThanOrEqual(row.tolerance);
  });

  it('checks every kind of figure', () => {
    expect(new Set(checks.rows.map((row) => row.kind)).size).toBe(6);
    expect(checks.rows).toHaveLength(15);
  });
});
