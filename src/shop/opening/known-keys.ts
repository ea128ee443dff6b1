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
    if (here instanceof z.ZodMiniObject) here = objectOrList(here.shape[String(step)], value);
    else if (here instanceof z.ZodMiniArray) here = objectOrList(here.def.element, value);
  });
  return here instanceof z.ZodMiniObject ? Object.keys(here.shape) : [];
}

function objectOrList(schema: z.core.$ZodType | undefined, value: unknown): unknown {
  if (schema instanceof z.ZodMiniExactOptional) return objectOrList(schema.def.innerType, value);
  if (schema instanceof z.ZodMiniDiscriminatedUnion) {
    const kind = valueAtPath(value, ['kind']);
    return schema.def.options.find(
      (option) => option instanceof z.ZodMiniObject && isOfKind(option.shape['kind'], kind),
    );
  }
  return schema;
}

function isOfKind(schema: z.core.$ZodType | undefined, kind: unknown): boolean {
  return schema !== undefined && z.safeParse(schema, kind).success;
}
