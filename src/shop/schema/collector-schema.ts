// The collector of the shop: its curve, how it runs here, its filter and its separator.

import { curveSchema } from './curve-schema.ts';
import type { Immutable } from './immutable.ts';
import { numberFrom, wholeNumberFrom } from './number.ts';
import { inWords, z } from './zod.ts';

const blinding = z.exactOptional(
  numberFrom({
    what: 'how many times its clean resistance the filter has now',
    unit: '[-]',
    low: 1,
    high: 1000,
    otherwise: '1, a clean filter',
  }),
);

const viscosity = z.exactOptional(
  numberFrom({
    what: 'dynamic viscosity of the air for which the resistance is stated',
    unit: '[Pa·s]',
    low: 1e-7,
    high: 1,
    otherwise: 'that of air at 20 °C',
  }),
);

const filter = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }).register(inWords, { description: 'No filter.' }),
    z
      .strictObject({
        kind: z.literal('resistance'),
        resistance: numberFrom({
          what: 'pressure loss of the clean filter for each unit of flow',
          unit: '[Pa·s/m³]',
          low: 0,
          high: 1e7,
        }),
        blinding,
        viscosity,
      })
      .register(inWords, {
        description: 'A plain resistance: loss = resistance × blinding × flow.',
      }),
    z
      .strictObject({
        kind: z.literal('media'),
        area: numberFrom({ what: 'area of the media', unit: '[m²]', low: 0.001, high: 10_000 }),
        testPressure: numberFrom({
          what: 'pressure at which the maker states its air permeability',
          unit: '[Pa]',
          low: 0,
          high: 10_000,
        }),
        testVelocity: numberFrom({
          what: 'face velocity of the clean media at that pressure',
          unit: '[m/s]',
          low: 1e-5,
          high: 100,
        }),
        blinding,
      })
      .register(inWords, {
        description: 'Resistance from the area and the air permeability of the media.',
      }),
    z
      .strictObject({
        kind: z.literal('measured'),
        flow: numberFrom({ what: 'flow of the reading', unit: '[m³/s]', low: 1e-4, high: 100 }),
        pressure: numberFrom({
          what: 'pressure across the clean filter at that flow',
          unit: '[Pa]',
          low: 0,
          high: 50_000,
        }),
        blinding,
      })
      .register(inWords, {
        description: 'Resistance from one measured pair of flow and pressure.',
      }),
  ])
  .register(inWords, {
    description: 'The filter behind the fan. Its loss is proportional to the flow.',
  });

const separator = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }).register(inWords, { description: 'No separator.' }),
    z
      .strictObject({
        kind: z.literal('coefficient'),
        coefficient: numberFrom({
          what: 'loss coefficient on the velocity pressure in its inlet',
          unit: '[-]',
          low: 0,
          high: 1000,
        }),
        diameter: numberFrom({
          what: 'inside diameter of its inlet',
          unit: '[m]',
          low: 0.01,
          high: 2,
        }),
      })
      .register(inWords, { description: 'loss = coefficient × velocity pressure in the inlet.' }),
  ])
  .register(inWords, {
    description: 'The separator before the fan. Nothing is taken off if the curve includes it.',
  });

const count = wholeNumberFrom({
  what: 'how many collectors alike, each with its own filter and separator',
  unit: '[-]',
  low: 2,
  high: 8,
});

const arrangement = z
  .discriminatedUnion('kind', [
    z
      .strictObject({ kind: z.literal('parallel'), count })
      .register(inWords, { description: 'Side by side on one main: they share the flow.' }),
    z
      .strictObject({ kind: z.literal('series'), count })
      .register(inWords, { description: 'One behind the other: each takes all of the flow.' }),
  ])
  .register(inWords, { description: 'Several collectors alike. Left out: there is one.' });

export const collectorSchema = z
  .strictObject({
    curve: curveSchema,
    speedRatio: z.exactOptional(
      numberFrom({
        what: 'speed at which the wheel runs here, over the speed of the curve (50/60 for 50 Hz)',
        unit: '[-]',
        low: 0.05,
        high: 5,
        otherwise: '1',
      }),
    ),
    wheelRatio: z.exactOptional(
      numberFrom({
        what: 'diameter of the wheel here, over the diameter of the curve',
        unit: '[-]',
        low: 0.2,
        high: 5,
        otherwise: '1',
      }),
    ),
    filter,
    separator,
    arrangement: z.exactOptional(arrangement),
  })
  .register(inWords, { id: 'collector', description: 'The machine that moves the air.' });

/** The collector of a shop. */
export type Collector = Immutable<z.infer<typeof collectorSchema>>;
