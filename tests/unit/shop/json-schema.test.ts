import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { jsonSchemaText, SCHEMA_FILES } from '../../../src/shop/json-schema.ts';
import { brokenFiles } from './broken-files.ts';
import { smallShop } from './small-shop.ts';

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Keys that say nothing of themselves, with where they stand. */
function wordless(node: unknown, place: string): string[] {
  if (!isNode(node)) return [];
  const properties = isNode(node['properties']) ? Object.entries(node['properties']) : [];
  const here = properties.flatMap(([key, property]) => {
    if (!isNode(property)) return [];
    const says = ['description', '$ref', 'const'].some((word) => word in property);
    return says ? [] : [`${place}.${key}`];
  });
  return [
    ...here,
    ...Object.entries(node).flatMap(([key, inner]) => wordless(inner, `${place}.${key}`)),
  ];
}

describe.each(['shop', 'curve'] as const)('the JSON Schema of the %s format', (format) => {
  const schema: unknown = JSON.parse(jsonSchemaText(format));

  it('is the one in shared/', () => {
    const file = join(import.meta.dirname, '../../../shared', SCHEMA_FILES[format]);
    const committed: unknown = JSON.parse(readFileSync(file, 'utf8'));
    expect(committed, 'run `npx tsx src/cli/write-schema.ts`').toEqual(schema);
  });

  it('says of every key what it is', () => {
    expect(wordless(schema, format)).toEqual([]);
  });

  it('refuses unknown keys in every object', () => {
    const text = JSON.stringify(schema);
    const objects = text.match(/"type":"object"/g) ?? [];
    const closed = text.match(/"additionalProperties":false/g) ?? [];
    expect(objects.length).toBeGreaterThan(4);
    expect(closed).toHaveLength(objects.length);
  });
});

describe('the JSON Schema of the shop format, read as a schema again', () => {
  const reread = z.fromJSONSchema(JSON.parse(jsonSchemaText('shop')));

  it('accepts a shop in order', () => {
    expect(reread.safeParse(smallShop).success).toBe(true);
  });

  it('refuses what has the wrong shape', () => {
    const shapes = brokenFiles.filter(({ place, says }) =>
      /length|diameter|basis|travel|humidity|"SI"/.test(`${place} ${says}`),
    );
    expect(shapes.length).toBeGreaterThan(8);
    for (const { name, text } of shapes) {
      expect(reread.safeParse(JSON.parse(text)).success, name).toBe(false);
    }
  });
});
