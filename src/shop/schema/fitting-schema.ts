// The fittings of a section. Each loss coefficient refers to the velocity pressure of the section.

import type { Immutable } from './immutable.ts';
import { numberFrom, wholeNumberFrom } from './number.ts';
import { nameOf } from './text.ts';
import { inWords, z } from './zod.ts';

const GORED_PIECES_RIGHT = 'must be 3, 4 or 5';
const GORED_RADIUS_RIGHT = 'must be 1 or 1.5';
const GORED_ANGLE_RIGHT = 'must be 30, 45, 60 or 90';

const count = z.exactOptional(
  wholeNumberFrom({
    what: 'how many of them',
    unit: '[-]',
    low: 1,
    high: 200,
    otherwise: '1',
  }),
);

const coefficient = z.exactOptional(
  numberFrom({
    what: 'loss coefficient of one, in place of the computed one',
    unit: '[-]',
    low: 0,
    high: 10_000,
    otherwise: 'computed from the shape',
  }),
);

const name = z.exactOptional(nameOf('What it is'));

const bend = z
  .strictObject({
    kind: z.literal('bend'),
    angle: numberFrom({ what: 'angle turned', unit: '[deg]', low: 1, high: 180 }),
    radius: numberFrom({
      what: 'radius of the centre line over the inside diameter',
      unit: '[-]',
      low: 0.5,
      high: 50,
    }),
    count,
    coefficient,
    name,
  })
  .register(inWords, { description: 'A smooth bend.' });

const mitre = z
  .strictObject({
    kind: z.literal('mitre'),
    angle: numberFrom({ what: 'angle turned in one cut', unit: '[deg]', low: 1, high: 120 }),
    count,
    coefficient,
    name,
  })
  .register(inWords, { description: 'A sharp bend without a radius.' });

const gored = z
  .strictObject({
    kind: z.literal('gored'),
    pieces: z.literal([3, 4, 5], { error: GORED_PIECES_RIGHT }).register(inWords, {
      description: 'Pieces of a 90 degree elbow of this make [-]: 3, 4 or 5.',
    }),
    radius: z.literal([1, 1.5], { error: GORED_RADIUS_RIGHT }).register(inWords, {
      description: 'Radius of the centre line over the inside diameter [-]: 1 or 1.5.',
    }),
    angle: z
      .literal([30, 45, 60, 90], { error: GORED_ANGLE_RIGHT })
      .register(inWords, { description: 'Angle turned [deg]: 30, 45, 60 or 90.' }),
    count,
    coefficient,
    name,
  })
  .register(inWords, { description: 'A segmented sheet-metal elbow.' });

const plain = z
  .strictObject({
    kind: z.literal('plain'),
    coefficient: numberFrom({ what: 'loss coefficient', unit: '[-]', low: 0, high: 1e6 }),
    count,
    name,
  })
  .register(inWords, { description: 'Anything else, by its loss coefficient.' });

export const fittingSchema = z
  .discriminatedUnion('kind', [bend, mitre, gored, plain])
  .register(inWords, { id: 'fitting', description: 'One fitting, or several of the same kind.' });

/** A fitting of a section. */
export type Fitting = Immutable<z.infer<typeof fittingSchema>>;
