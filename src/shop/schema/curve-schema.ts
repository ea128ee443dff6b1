// A collector's curve as a document of its own: entered points and what they mean. The same object
// stands inside a shop, so a shop file needs no other file.

import type { Immutable } from './immutable.ts';
import { numberFrom, wholeNumberFrom } from './number.ts';
import { testSchema } from './test-schema.ts';
import { idOf, nameOf, note } from './text.ts';
import { inWords, z } from './zod.ts';

/** The `format` of a curve document. */
export const CURVE_FORMAT = 'dropcurve-curve';
/** The newest version of the curve format, the one that is written. */
export const CURVE_VERSION = 1;

const POINTS_RIGHT = 'must be a list of 2 to 5000 points';

const flow = numberFrom({ what: 'flow', unit: '[m³/s]', low: 0, high: 100 });

const basis = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('fan-static') }).register(inWords, {
      description: 'Fan static pressure as rated to ANSI/AMCA 210 or ISO 5801.',
    }),
    z
      .strictObject({
        kind: z.literal('tap'),
        diameter: numberFrom({
          what: 'inside diameter of the pipe that holds the tap',
          unit: '[m]',
          low: 0.01,
          high: 2,
        }),
      })
      .register(inWords, {
        description:
          'Suction (a positive number) read at a static tap in an inlet pipe; the velocity pressure in that pipe is taken off.',
      }),
    z
      .strictObject({ kind: z.literal('total') })
      .register(inWords, { description: 'Total suction at the inlet flange: used as entered.' }),
  ])
  .register(inWords, { description: 'What the entered pressures are.' });

const includes = z
  .strictObject({
    filter: z.boolean({ error: 'must be true or false' }).register(inWords, {
      description: 'true: the points were taken with the clean filter in place.',
    }),
    separator: z.boolean({ error: 'must be true or false' }).register(inWords, {
      description: 'true: the points were taken with the separator (cyclone) in place.',
    }),
  })
  .register(inWords, { description: 'What stood in the air’s way when the points were taken.' });

const point = z.strictObject({
  flow,
  pressure: numberFrom({
    what: 'pressure, as the basis says; suction is positive',
    unit: '[Pa]',
    low: -100_000,
    high: 100_000,
  }),
  aside: z
    .exactOptional(z.literal(true, { error: 'must be true, or left out' }))
    .register(inWords, {
      description: 'true: the point is kept and shown, but not used. Left out: it is used.',
    }),
});

const fit = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('through') }).register(inWords, {
      description: 'Exactly through the used points; no flow may stand there twice.',
    }),
    z
      .strictObject({
        kind: z.literal('smooth'),
        pieces: z.exactOptional(
          wholeNumberFrom({
            what: 'how many pieces the smoothed line is made of, at most',
            unit: '[-]',
            low: 1,
            high: 12,
            otherwise: 'as many as the readings can bear, up to 4',
          }),
        ),
      })
      .register(inWords, {
        description:
          'Smoothed between scattered readings by least squares, falling beyond its peak; a flow may stand there more than once, in any order.',
      }),
  ])
  .register(inWords, {
    description: 'How the line follows the points. Left out: exactly through them.',
  });

const powerPoint = z.strictObject({
  flow,
  power: numberFrom({ what: 'shaft power', unit: '[W]', low: 0, high: 1e6 }),
});

export const curveSchema = z
  .strictObject({
    $schema: z
      .exactOptional(note)
      .register(inWords, { description: 'For editors: where this schema is.' }),
    format: z.literal(CURVE_FORMAT, { error: `must be "${CURVE_FORMAT}"` }),
    version: z.literal(CURVE_VERSION, { error: `must be ${CURVE_VERSION}` }),
    units: z.literal('SI', { error: 'must be "SI": the file has to say that its numbers are SI' }),
    id: z.exactOptional(idOf('Id of the curve')),
    name: nameOf('Name of the collector'),
    note: z.exactOptional(note),
    source: z.exactOptional(nameOf('Where the points come from')),
    basis,
    includes,
    density: numberFrom({
      what: 'density of the air at which the points hold (1.2 for most charts)',
      unit: '[kg/m³]',
      low: 0.01,
      high: 2000,
    }),
    speed: z.exactOptional(
      numberFrom({
        what: 'speed of the wheel at which the points hold',
        unit: '[rev/min]',
        low: 1,
        high: 100_000,
        otherwise: 'not known; only `speedRatio` of the collector counts',
      }),
    ),
    wheelDiameter: z.exactOptional(
      numberFrom({
        what: 'diameter of the wheel',
        unit: '[m]',
        low: 0.01,
        high: 5,
        otherwise: 'not known; only `wheelRatio` of the collector counts',
      }),
    ),
    points: z
      .array(point, { error: POINTS_RIGHT })
      .check(z.minLength(2, { error: POINTS_RIGHT }), z.maxLength(5000, { error: POINTS_RIGHT }))
      .register(inWords, {
        description:
          'The entered points. Those that are not set aside: two at least, and with a line exactly through them the flow strictly rises from one to the next.',
      }),
    fit: z.exactOptional(fit),
    test: z.exactOptional(testSchema),
    power: z
      .exactOptional(
        z
          .array(powerPoint, { error: POINTS_RIGHT })
          .check(
            z.minLength(2, { error: POINTS_RIGHT }),
            z.maxLength(5000, { error: POINTS_RIGHT }),
          ),
      )
      .register(inWords, {
        description: 'Shaft power against flow, flow strictly rising. Left out: not known.',
      }),
    efficiency: z.exactOptional(
      numberFrom({
        what: 'efficiency of the fan as a fraction, where no power points are known',
        unit: '[-]',
        low: 0.01,
        high: 1,
      }),
    ),
    nameplate: z.exactOptional(
      numberFrom({
        what: 'rated shaft power of the motor',
        unit: '[W]',
        low: 1,
        high: 1e6,
      }),
    ),
    price: z
      .exactOptional(
        z.strictObject({
          amount: numberFrom({ what: 'price', unit: '[of the currency]', low: 0, high: 1e9 }),
          currency: z
            .string({ error: 'must be three capital letters, such as EUR' })
            .check(z.regex(/^[A-Z]{3}$/, { error: 'must be three capital letters, such as EUR' }))
            .register(inWords, { description: 'ISO 4217 code of the currency.' }),
        }),
      )
      .register(inWords, { description: 'What the collector costs. Left out: not known.' }),
  })
  .register(inWords, {
    id: 'curve',
    description: 'What a collector does: entered points and what they mean.',
  });

/** A curve document. */
export type Curve = Immutable<z.infer<typeof curveSchema>>;
