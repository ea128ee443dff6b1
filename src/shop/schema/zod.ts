// The one way into zod for the schemas of this room: its small edition, whose parts are functions,
// so that what no schema uses is left out of the page. Compiled checks are switched off before the
// first schema is made: they need `eval`, which the page's content policy forbids.

import * as z from 'zod/mini';

z.config({ jitless: true });

/** Where a schema says in words what it is, for the JSON Schema: `.register(inWords, {…})`. */
export const inWords = z.globalRegistry;

export { z };
