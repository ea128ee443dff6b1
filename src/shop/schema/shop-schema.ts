// The shop document, format version 1: everything that is known of one shop, in SI numbers.
// Angles are in degrees and temperatures in °C, as people read them.

import { airSchema } from './air-schema.ts';
import { collectorSchema } from './collector-schema.ts';
import { dropSchema } from './drop-schema.ts';
import type { Immutable } from './immutable.ts';
import { numberFrom } from './number.ts';
import { purchaseSchema } from './purchase-schema.ts';
import { sectionSchema } from './section-schema.ts';
import { idOf, nameOf, note } from './text.ts';
import { inWords, z } from './zod.ts';

/** The `format` of a shop document. */
export const SHOP_FORMAT = 'dropcurve-shop';
/** The newest version of the shop format, the one that is written. */
export const SHOP_VERSION = 1;

const SECTIONS_RIGHT = 'must be a list of 1 to 5000 sections';
const DROPS_RIGHT = 'must be a list of 1 to 5000 drops';

const carryingRange = z
  .strictObject({
    low: numberFrom({ what: 'speed below which chips settle', unit: '[m/s]', low: 0, high: 100 }),
    high: numberFrom({
      what: 'speed above which the pipe throttles the collector',
      unit: '[m/s]',
      low: 0,
      high: 200,
    }),
  })
  .register(inWords, {
    description:
      'The speeds that carry chips without waste; common practice is 17.78 to 22.86 m/s (3,500 to 4,500 ft/min).',
  });

const gateSet = z
  .strictObject({
    id: idOf('Id of the gate set'),
    name: nameOf('Name of the gate set'),
    open: z
      .array(idOf('Id of a drop'), { error: 'must be a list of ids of drops' })
      .check(z.maxLength(5000, { error: 'must be a list of at most 5000 ids of drops' }))
      .register(inWords, { description: 'Ids of the drops that are open together.' }),
  })
  .register(inWords, { id: 'gateSet', description: 'Gates that are open together, by name.' });

const variantOf = z
  .strictObject({
    shop: idOf('Id that the other shop is kept under in the browser where this was kept beside it'),
    name: nameOf('Name of the other shop at that time'),
    words: nameOf('What is other in this one'),
  })
  .register(inWords, {
    description: 'The shop that this one was kept beside, to be compared with it.',
  });

export const shopSchema = z
  .strictObject({
    $schema: z
      .exactOptional(note)
      .register(inWords, { description: 'For editors: where this schema is.' }),
    format: z.literal(SHOP_FORMAT, { error: `must be "${SHOP_FORMAT}"` }),
    version: z.literal(SHOP_VERSION, { error: `must be ${SHOP_VERSION}` }),
    units: z.literal('SI', { error: 'must be "SI": the file has to say that its numbers are SI' }),
    name: nameOf('Name of the shop'),
    note: z.exactOptional(note),
    variantOf: z.exactOptional(variantOf),
    air: airSchema,
    collector: collectorSchema,
    carryingRange,
    sections: z
      .array(sectionSchema, { error: SECTIONS_RIGHT })
      .check(
        z.minLength(1, { error: SECTIONS_RIGHT }),
        z.maxLength(5000, { error: SECTIONS_RIGHT }),
      )
      .register(inWords, {
        description:
          'The sections form a tree: exactly one empties into the collector, and every section that no other empties into is fed by exactly one drop.',
      }),
    drops: z
      .array(dropSchema, { error: DROPS_RIGHT })
      .check(z.minLength(1, { error: DROPS_RIGHT }), z.maxLength(5000, { error: DROPS_RIGHT }))
      .register(inWords, {
        description: 'The drops: each feeds a section that nothing else feeds.',
      }),
    gateSets: z
      .array(gateSet, { error: 'must be a list of gate sets, empty if there are none' })
      .check(z.maxLength(1000, { error: 'must be a list of at most 1000 gate sets' }))
      .register(inWords, {
        description: 'Gate sets that are saved by name; an empty list if there are none.',
      }),
    purchase: z.exactOptional(purchaseSchema),
  })
  .register(inWords, {
    id: 'shop',
    title: 'Dropcurve shop',
    description: 'One shop: air, collector and ducts.',
  });

/** A shop document. */
export type Shop = Immutable<z.infer<typeof shopSchema>>;
/** Gates that are open together, by name. */
export type GateSet = Shop['gateSets'][number];
