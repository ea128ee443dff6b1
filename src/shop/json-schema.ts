// The JSON Schemas of the two formats, made from the schemas that open files, so that they can't
// say anything else. They are enough to write a file by hand, and editors read them.

import { curveSchema } from './schema/curve-schema.ts';
import { shopSchema } from './schema/shop-schema.ts';
import { z } from './schema/zod.ts';

/** The files that hold the schemas, in shared/. */
export const SCHEMA_FILES = {
  shop: 'dropcurve-shop.schema.json',
  curve: 'dropcurve-curve.schema.json',
} as const;

/**
 * The JSON Schema (draft 2020-12) of a format, as the text of its file.
 *
 * @param format - which of the two formats
 * @returns JSON, indented by two spaces, with a line end
 */
export function jsonSchemaText(format: keyof typeof SCHEMA_FILES): string {
  const schema = format === 'shop' ? shopSchema : curveSchema;
  const { $schema, ...body } = z.toJSONSchema(schema);
  const title = format === 'shop' ? 'Dropcurve shop' : 'Dropcurve collector curve';
  return `${JSON.stringify({ $schema, title, ...body }, undefined, 2)}\n`;
}
