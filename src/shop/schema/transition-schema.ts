// How the diameter changes between two pipes in a row, or between a port and its pipe.

import { numberFrom } from './number.ts';
import { inWords, z } from './zod.ts';

export const transitionSchema = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: z.literal('taper'),
        angle: numberFrom({
          what: 'angle between opposite sides of the cone',
          unit: '[deg]',
          low: 1,
          high: 180,
        }),
      })
      .register(inWords, { description: 'A cone.' }),
    z.strictObject({ kind: z.literal('sudden') }).register(inWords, { description: 'A step.' }),
    z
      .strictObject({
        kind: z.literal('plain'),
        coefficient: numberFrom({
          what: 'loss coefficient on the velocity pressure in the smaller pipe',
          unit: '[-]',
          low: 0,
          high: 10_000,
        }),
      })
      .register(inWords, { description: 'A loss coefficient as a plain number.' }),
  ])
  .register(inWords, {
    id: 'transition',
    description: 'The change of diameter. Left out: a cone of 30 degrees where there is a change.',
  });
