// The one way into zod for the schemas of this room. Compiled checks are switched off before the
// first schema is made: they need `eval`, which the page's content policy forbids.

import * as z from 'zod';

z.config({ jitless: true });

export { z };
