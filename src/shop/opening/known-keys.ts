// Which keys a schema knows at a place, so that a complaint about an unknown key can name them.

import { z } from '../schema/zod.ts';
import { type Path, valueAtPath } from './place.ts';

/**
 * The keys that may stand in the object at a path.
 *
 * @param schema - the schema of the whole document
 * @param document - the document, which decides between the kinds of an object
 * @param path - the way to the object
 * @returns its keys; empty where the path leads to no object
 */
export function knownKeys(schema: z.core.$ZodType, document: unknown, path: Path): string[] {
  let here = objectOrList(schema, document);
  path.forEach((step, i) => {
    const value = valueAtPath(document, path.slice(0, i + 1));
    if (here instanceof z.ZodObject) here = objectOrList(here.shape[String(step)], value);
    else if (here instanceof z.ZodArray) here = objectOrList(here.element, value);
  });
  return here instanceof z.ZodObject ? Object.keys(here.shape) : [];
}

function objectOrList(schema: z.core.$ZodType | undefined, value: unknown): unknown {
  if (schema instanceof z.ZodExactOptional) return objectOrList(schema.unwrap(), value);
  if (schema instanceof z.ZodDiscriminatedUnion) {
    const kind = valueAtPath(value, ['kind']);
    return schema.options.find(
      (option) => option instanceof z.ZodObject && option.shape['kind']?.safeParse(kind).success,
    );
  }
  return schema;
}
