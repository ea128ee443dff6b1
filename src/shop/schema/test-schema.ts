// A test of one's own collector: what was read at each throttle setting, with what, and in which air.
// The points of the curve are reduced from it; it is kept so that no reading is ever lost. Whatever
// was not read yet is left out, so a half-filled sheet is in order.
// (Over 200 lines: one schema, with what each reading is.)

import { roomAir } from './air-schema.ts';
import type { Immutable } from './immutable.ts';
import { numberFrom } from './number.ts';
import { idOf, note } from './text.ts';
import { inWords, z } from './zod.ts';

const ROWS_RIGHT = 'must be a list of at most 200 throttle settings';
const READINGS_RIGHT = 'must be a list of 1 to 100 readings';

const testAir = z
  .discriminatedUnion('kind', [
    roomAir,
    z
      .strictObject({
        kind: z.literal('barometer'),
        pressure: numberFrom({
          what: 'pressure of the room, not reduced to sea level',
          unit: '[Pa]',
          low: 40_000,
          high: 120_000,
        }),
        temperature: numberFrom({ what: 'temperature', unit: '[°C]', low: -40, high: 60 }),
        humidity: numberFrom({
          what: 'relative humidity as a fraction, 0.45 for 45 %',
          unit: '[-]',
          low: 0,
          high: 1,
        }),
      })
      .register(inWords, {
        description: 'Density from a barometer, the temperature and the humidity.',
      }),
    z
      .strictObject({
        kind: z.literal('density'),
        density: numberFrom({ what: 'density', unit: '[kg/m³]', low: 0.01, high: 2000 }),
      })
      .register(inWords, { description: 'Density as a plain number.' }),
  ])
  .register(inWords, { description: 'The air during the test.' });

const accuracyOf = (what: string, unit: string) =>
  z
    .strictObject({
      fraction: z.exactOptional(
        numberFrom({
          what: `stated accuracy as a fraction of the reading, 0.03 for ± 3 %`,
          unit: '[-]',
          low: 0,
          high: 1,
          otherwise: '0',
        }),
      ),
      absolute: z.exactOptional(
        numberFrom({
          what: 'stated accuracy whatever the reading',
          unit,
          low: 0,
          high: 10_000,
          otherwise: '0',
        }),
      ),
    })
    .register(inWords, {
      description: `How far ${what} may be off, as its maker states; both parts add up.`,
    });

const staticReading = z.exactOptional(
  numberFrom({
    what: 'static suction read at the tap, a positive number',
    unit: '[Pa]',
    low: 0,
    high: 100_000,
    otherwise: 'not read yet',
  }),
);

const speed = numberFrom({ what: 'speed of the air', unit: '[m/s]', low: 0, high: 200 });
const velocityPressure = numberFrom({
  what: 'velocity pressure',
  unit: '[Pa]',
  low: 0,
  high: 25_000,
});

const overRange = (what: string) =>
  z.exactOptional(z.literal(true, { error: 'must be true, or left out' })).register(inWords, {
    description: `true: ${what} was beyond the range of the instrument; the reading is the end of the range, a lower bound.`,
  });

const listOf = (reading: typeof speed) =>
  z
    .array(z.nullable(reading), { error: READINGS_RIGHT })
    .check(z.minLength(1, { error: READINGS_RIGHT }), z.maxLength(100, { error: READINGS_RIGHT }))
    .register(inWords, {
      description: 'One for each place of the traverse; null where not read yet.',
    });

const airReading = z
  .discriminatedUnion('kind', [
    z
      .strictObject({ kind: z.literal('closed') })
      .register(inWords, { description: 'The pipe was blanked off: no flow.' }),
    z
      .strictObject({
        kind: z.literal('velocity'),
        reading: z.exactOptional(speed),
        overRange: overRange('the speed'),
      })
      .register(inWords, { description: 'One speed, at the centre of the pipe.' }),
    z
      .strictObject({
        kind: z.literal('velocity-pressure'),
        reading: z.exactOptional(velocityPressure),
        overRange: overRange('the velocity pressure'),
      })
      .register(inWords, { description: 'One velocity pressure, at the centre of the pipe.' }),
    z
      .strictObject({
        kind: z.literal('velocity-traverse'),
        readings: listOf(speed),
        overRange: overRange('one or more of the speeds'),
      })
      .register(inWords, { description: 'Speeds at the places of a traverse.' }),
    z
      .strictObject({
        kind: z.literal('velocity-pressure-traverse'),
        readings: listOf(velocityPressure),
        overRange: overRange('one or more of the velocity pressures'),
      })
      .register(inWords, { description: 'Velocity pressures at the places of a traverse.' }),
  ])
  .register(inWords, { description: 'What was read of the moving air.' });

const row = z.strictObject({
  id: idOf('Id of the throttle setting'),
  note: z.exactOptional(note),
  static: staticReading,
  staticOverRange: overRange('the suction'),
  air: airReading,
});

export const testSchema = z
  .strictObject({
    diameter: z.exactOptional(
      numberFrom({
        what: 'inside diameter of the pipe that holds the tap and the speed readings',
        unit: '[m]',
        low: 0.01,
        high: 2,
        otherwise: 'not measured yet',
      }),
    ),
    diameterTolerance: z.exactOptional(
      numberFrom({
        what: 'how far that diameter may be off',
        unit: '[m]',
        low: 0,
        high: 0.1,
        otherwise: '0',
      }),
    ),
    air: testAir,
    densityTolerance: z.exactOptional(
      numberFrom({
        what: 'how far the density may be off, as a fraction',
        unit: '[-]',
        low: 0,
        high: 0.5,
        otherwise: '0',
      }),
    ),
    centre: z
      .strictObject({
        factor: numberFrom({
          what: 'mean speed in the pipe over the speed at its centre',
          unit: '[-]',
          low: 0.5,
          high: 1,
        }),
        tolerance: z.exactOptional(
          numberFrom({
            what: 'how far that factor may be off',
            unit: '[-]',
            low: 0,
            high: 0.5,
            otherwise: '0',
          }),
        ),
      })
      .register(inWords, { description: 'From one reading at the centre to the mean speed.' }),
    traverse: z
      .strictObject({
        rule: z
          .enum(['log-tchebycheff', 'equal-area'], {
            error: 'must be "log-tchebycheff" or "equal-area"',
          })
          .register(inWords, { description: 'By which rule the places of a traverse are spread.' }),
        perDiameter: z
          .literal([4, 6, 8, 10], { error: 'must be 4, 6, 8 or 10' })
          .register(inWords, { description: 'How many places on one diameter.' }),
        diameters: z
          .literal([1, 2, 3], { error: 'must be 1, 2 or 3' })
          .register(inWords, { description: 'How many diameters are traversed.' }),
      })
      .register(inWords, {
        description: 'Where the readings of a traverse were taken. Speeds are averaged.',
      }),
    instruments: z
      .strictObject({
        static: z.exactOptional(accuracyOf('the manometer at the tap', '[Pa]')),
        velocity: z.exactOptional(accuracyOf('the anemometer', '[m/s]')),
        velocityPressure: z.exactOptional(accuracyOf('the manometer of the Pitot tube', '[Pa]')),
        velocityDensity: z.exactOptional(
          numberFrom({
            what: 'density for which the anemometer shows the speed, if it does so whatever the air',
            unit: '[kg/m³]',
            low: 0.1,
            high: 10,
            otherwise: 'it shows the speed that the air has',
          }),
        ),
        note: z.exactOptional(note),
      })
      .register(inWords, {
        description: 'The instruments and how far they may be off. Left out: not known.',
      }),
    rows: z
      .array(row, { error: ROWS_RIGHT })
      .check(z.maxLength(200, { error: ROWS_RIGHT }))
      .register(inWords, {
        description: 'One for each throttle setting, in the order of the test.',
      }),
  })
  .register(inWords, { description: 'A test of one’s own that the points were reduced from.' });

/** A test of one's own. */
export type TestSheet = Immutable<z.infer<typeof testSchema>>;
/** One throttle setting of a test. */
export type TestSheetRow = TestSheet['rows'][number];
