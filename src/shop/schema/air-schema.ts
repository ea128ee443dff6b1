// The air of the shop: computed from where the shop stands, or as plain numbers.

import type { Immutable } from './immutable.ts';
import { numberFrom } from './number.ts';
import { inWords, z } from './zod.ts';

/** Air by where it is: height, temperature, humidity. */
export const roomAir = z
  .strictObject({
    kind: z.literal('room'),
    altitude: numberFrom({
      what: 'height of the shop above the sea',
      unit: '[m]',
      low: -500,
      high: 6000,
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
    description:
      'Density and viscosity follow from the altitude, the temperature and the humidity.',
  });

const plainAir = z
  .strictObject({
    kind: z.literal('plain'),
    density: numberFrom({ what: 'density', unit: '[kg/m³]', low: 0.01, high: 2000 }),
    viscosity: numberFrom({ what: 'dynamic viscosity', unit: '[Pa·s]', low: 1e-7, high: 1 }),
    pressure: z.exactOptional(
      numberFrom({
        what: 'pressure of the room',
        unit: '[Pa]',
        low: 1000,
        high: 1e7,
        otherwise: '101325; it is reported, the ducts do not depend on it',
      }),
    ),
  })
  .register(inWords, { description: 'Density and viscosity as plain numbers.' });

export const airSchema = z
  .discriminatedUnion('kind', [roomAir, plainAir])
  .register(inWords, { id: 'air', description: 'The air of the room, which every duct carries.' });

/** The air of the shop as the document states it. */
export type ShopAir = Immutable<z.infer<typeof airSchema>>;
