// How the diameter changes between two pipes in a row, or between a port and its pipe.

import { numberFrom } from './number.ts';
import { z } from './zod.ts';

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
      .meta({ description: 'A cone.' }),
    z.strictObject({ kind: z.literal('sudden') }).meta({ description: 'A step.' }),
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
      .meta({ description: 'A loss coefficient as a plain number.' }),
  ])
  .meta({
    id: 'transition',
    description: 'The change of diameter. Left out: a cone of 30 degrees where there is a change.',
  });
