// A shop as a short text, and back. What follows from the rest is left out: ids that follow from
// names, and what says of the document that it is one.

import { type Shop, SHOP_FORMAT } from '../schema/shop-schema.ts';
import { CURVE_FORMAT } from '../schema/curve-schema.ts';
import { LineReader, readTable, type Row, writeTable } from './columns.ts';
import { distanceTo, IdSequence, idAt } from './short-ids.ts';

/** A key that is left out, and what it says. */
const LEFT_OUT = { format: SHOP_FORMAT, units: 'SI' } as const;
const LEFT_OUT_OF_CURVE = { format: CURVE_FORMAT, units: 'SI' } as const;

/**
 * Packs a shop.
 *
 * @param shop - the shop
 * @returns lines of text
 */
export function packShop(shop: Shop): string {
  const { format: _format, units: _units, sections, drops, gateSets, collector, ...rest } = shop;
  const { format: _curveFormat, units: _curveUnits, ...curve } = collector.curve;
  const sectionIds = sections.map(({ id }) => id);
  const dropIds = drops.map(({ id }) => id);
  return writeTable([
    {
      ...rest,
      collector: { ...collector, curve },
      sections: shortened(sections).map(({ into, ...section }, at) => ({
        ...section,
        into: distanceTo(String(into), at, sectionIds),
      })),
      drops: shortened(drops).map(({ into, ...drop }, at) => ({
        ...drop,
        into: distanceTo(String(into), 2 * at, sectionIds),
      })),
      gateSets: shortened(gateSets).map(({ open, ...set }) => ({
        ...set,
        open: (open as readonly string[]).map((id) => distanceTo(id, 0, dropIds) ?? id),
      })),
    },
  ]).join('\n');
}

/**
 * Unpacks a shop. What comes of it still has to be opened like every document.
 *
 * @param text - by `packShop`
 * @returns a document
 * @throws LinkFault if the text is none of a shop
 */
export function unpackShop(text: string): unknown {
  const [document = {}] = readTable(new LineReader(text), 1);
  const { sections, drops, gateSets, collector, ...rest } = document;
  const sectionRows = restored(sections);
  const sectionIds = sectionRows.map(({ id }) => String(id));
  const dropRows = restored(drops);
  const dropIds = dropRows.map(({ id }) => String(id));
  return {
    ...LEFT_OUT,
    ...rest,
    collector: withCurve(collector),
    sections: sectionRows.map((row, at) => ({ ...row, into: idAt(row['into'], at, sectionIds) })),
    drops: dropRows.map((row, at) => ({ ...row, into: idAt(row['into'], 2 * at, sectionIds) })),
    gateSets: restored(gateSets).map((row) => ({
      ...row,
      open: listOf(row['open']).map((id) => idAt(id, 0, dropIds)),
    })),
  };
}

function withCurve(collector: unknown): unknown {
  if (!isRow(collector) || !isRow(collector['curve'])) return collector;
  return { ...collector, curve: { ...LEFT_OUT_OF_CURVE, ...collector['curve'] } };
}

function shortened(
  rows: readonly (Row & { readonly id: string; readonly name?: string })[],
): Row[] {
  const ids = new IdSequence();
  return rows.map(({ id, ...row }) => ({ id: ids.shorten(id, row.name), ...row }));
}

function restored(rows: unknown): Row[] {
  const ids = new IdSequence();
  return listOf(rows)
    .filter(isRow)
    .map(({ id, ...row }) => ({ id: ids.restore(textOf(id), textOf(row['name'])), ...row }));
}

function textOf(value: unknown): string | undefined {
  return typeof value === 'string' || typeof value === 'number' ? `${value}` : undefined;
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function isRow(value: unknown): value is Row {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
