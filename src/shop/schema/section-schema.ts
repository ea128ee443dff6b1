// A section: a run of one pipe, from where air enters it to where it empties into the next section
// or into the collector.

import { fittingSchema } from './fitting-schema.ts';
import type { Immutable } from './immutable.ts';
import { numberFrom } from './number.ts';
import { idOf, nameOf, note } from './text.ts';
import { transitionSchema } from './transition-schema.ts';
import { inWords, z } from './zod.ts';

const roughness = numberFrom({ what: 'roughness of the wall', unit: '[m]', low: 0, high: 0.02 });

const pipe = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: z.literal('catalogue'),
        family: idOf('Family in shared/pipes.json, such as galvanised-spiral'),
        size: idOf('Size in that family, such as 150'),
        roughness: z.exactOptional(
          numberFrom({
            what: 'roughness of the wall',
            unit: '[m]',
            low: 0,
            high: 0.02,
            otherwise: 'that of the catalogue',
          }),
        ),
      })
      .register(inWords, {
        description: 'A pipe of the catalogue, with its true inside diameter.',
      }),
    z
      .strictObject({
        kind: z.literal('custom'),
        diameter: numberFrom({
          what: 'inside diameter (150 mm is 0.15)',
          unit: '[m]',
          low: 0.01,
          high: 2,
        }),
        roughness,
      })
      .register(inWords, { description: 'A pipe by its own inside diameter and roughness.' }),
  ])
  .register(inWords, { id: 'pipe', description: 'The pipe of a section.' });

const join = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: z.literal('momentum'),
        angle: numberFrom({
          what: 'angle between this inlet and the pipe it joins, 0 for the straight run',
          unit: '[deg]',
          low: 0,
          high: 90,
        }),
      })
      .register(inWords, {
        description: 'The loss follows from the flows, by the momentum balance of the wye.',
      }),
    z
      .strictObject({
        kind: z.literal('fixed'),
        coefficient: numberFrom({ what: 'loss coefficient', unit: '[-]', low: 0, high: 10_000 }),
        of: z
          .literal(['own', 'combined'], { error: 'must be "own" or "combined"' })
          .register(inWords, {
            description:
              'Whose velocity pressure: that of this section, or of the section it empties into.',
          }),
      })
      .register(inWords, { description: 'A fixed loss coefficient.' }),
  ])
  .register(inWords, {
    id: 'join',
    description:
      'How this section joins a wye. Required where two or more sections empty into the same one; must be left out where it is the only one.',
  });

export const sectionSchema = z
  .strictObject({
    id: idOf('Id of the section, unique among sections; "collector" is reserved'),
    name: z.exactOptional(nameOf('Name of the section')),
    into: idOf('Id of the section that this one empties into, or "collector"'),
    pipe,
    length: numberFrom({
      what: 'length of the straight pipe, bends not counted',
      unit: '[m]',
      low: 0,
      high: 1000,
    }),
    compression: z.exactOptional(
      numberFrom({
        what: 'for a hose not pulled tight: the part of its length that is pushed together, a fraction',
        unit: '[-]',
        low: 0,
        high: 0.6,
        otherwise: '0, pulled tight',
      }),
    ),
    fittings: z
      .array(fittingSchema, { error: 'must be a list of fittings, empty if there are none' })
      .check(z.maxLength(200, { error: 'must be a list of at most 200 fittings' }))
      .register(inWords, { description: 'Bends and other losses in this section.' }),
    join: z.exactOptional(join),
    transition: z.exactOptional(transitionSchema),
    note: z.exactOptional(note),
  })
  .register(inWords, { id: 'section', description: 'A run of one pipe.' });

/** A section of the ducts. */
export type Section = Immutable<z.infer<typeof sectionSchema>>;
/** The pipe of a section. */
export type Pipe = Section['pipe'];
/** How a section joins a wye. */
export type SectionJoin = NonNullable<Section['join']>;
/** The change of diameter at the end of a section, or between a port and its pipe. */
export type Transition = NonNullable<Section['transition']>;
