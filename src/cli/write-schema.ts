// Writes the JSON Schemas of the formats to shared/, after their zod schemas have changed.
// Run it as `npx tsx src/cli/write-schema.ts`, then format: `npx biome check --write shared`.

import { writeFileSync } from 'node:fs';
import { jsonSchemaText, SCHEMA_FILES } from '../shop/json-schema.ts';

for (const format of ['shop', 'curve'] as const) {
  const file = new URL(`../../shared/${SCHEMA_FILES[format]}`, import.meta.url);
  writeFileSync(file, jsonSchemaText(format));
}
