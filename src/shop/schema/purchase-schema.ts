// What was entered for buying: lengths of stock and prices. Nothing of the air is computed from it.

import type { Immutable } from './immutable.ts';
import { numberFrom } from './number.ts';
import { idOf } from './text.ts';
import { inWords, z } from './zod.ts';

const ITEM_RIGHT = 'must be the key of an item of the cut list, one line of 1 to 300 characters';
const LENGTHS_RIGHT = 'must be a list of at most 200 lengths of stock';
const PRICES_RIGHT = 'must be a list of at most 5000 prices';

const stockLength = z.strictObject({
  family: idOf('Family in shared/pipes.json, or own- and the roughness of a pipe of your own'),
  length: numberFrom({ what: 'length in which it is bought', unit: '[m]', low: 0.3, high: 30 }),
});

const price = z.strictObject({
  item: z
    .string({ error: ITEM_RIGHT })
    .check(z.minLength(1, { error: ITEM_RIGHT }), z.maxLength(300, { error: ITEM_RIGHT }))
    // oxlint-disable-next-line no-control-regex -- control characters are what it keeps out
    .check(z.regex(/^[^\u0000-\u001f\u007f-\u009f]*$/, { error: ITEM_RIGHT }))
    .register(inWords, { description: 'Key of the item, such as pipe-galvanised-spiral-6in.' }),
  price: numberFrom({
    what: 'price of one: a length of stock, a metre of hose, a piece',
    unit: '[of the currency]',
    low: 0,
    high: 1e6,
  }),
});

export const purchaseSchema = z
  .strictObject({
    currency: z.exactOptional(
      z
        .string({ error: 'must be three capital letters, such as EUR' })
        .check(z.regex(/^[A-Z]{3}$/, { error: 'must be three capital letters, such as EUR' }))
        .register(inWords, { description: 'ISO 4217 code of the currency. Left out: not said.' }),
    ),
    stockLengths: z.exactOptional(
      z
        .array(stockLength, { error: LENGTHS_RIGHT })
        .check(z.maxLength(200, { error: LENGTHS_RIGHT }))
        .register(inWords, {
          description: 'Length of the stock of a family of pipes. Left out: 10 ft or 3 m.',
        }),
    ),
    prices: z.exactOptional(
      z
        .array(price, { error: PRICES_RIGHT })
        .check(z.maxLength(5000, { error: PRICES_RIGHT }))
        .register(inWords, {
          description: 'Prices by item. Those of items that the shop no longer needs are kept.',
        }),
    ),
  })
  .register(inWords, {
    id: 'purchase',
    description: 'What was entered for buying. Left out: nothing yet.',
  });

/** What was entered for buying. */
export type Purchase = Immutable<z.infer<typeof purchaseSchema>>;
