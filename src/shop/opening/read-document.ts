// From the text of a file to a raw document of the right format and the newest version.

import { findJsonFault } from './json-fault.ts';
import { migrate, type RawDocument, type VersionHistory } from './migrations.ts';
import { showValue } from './place.ts';
import type { Problem } from './problem.ts';

/** Longest text that is read at all, in characters: many times any real shop. */
export const LONGEST_TEXT = 5_000_000;
/** Deepest nesting of brackets; the format itself needs nine. */
const DEEPEST_NESTING = 32;

/** A raw document, or why the file can't be read as one. */
export type ReadDocument =
  | { readonly kind: 'read'; readonly document: RawDocument }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Reads the text of a file as JSON.
 *
 * @param text - the text of the file
 * @returns the JSON value, or the problem with the line and the column where reading stopped
 */
export function readJson(
  text: string,
): { readonly kind: 'read'; readonly value: unknown } | Extract<ReadDocument, { kind: 'refused' }> {
  if (text.length > LONGEST_TEXT) {
    const message = `is ${text.length} characters long; a shop file has at most ${LONGEST_TEXT}`;
    return refuse('the file', message);
  }
  const withoutMark = text.startsWith('﻿') ? text.slice(1) : text;
  const fault = findJsonFault(withoutMark, DEEPEST_NESTING);
  if (fault !== undefined) {
    return refuse(`line ${fault.line}, column ${fault.column}`, `not JSON here: ${fault.message}`);
  }
  return { kind: 'read', value: JSON.parse(withoutMark) };
}

/**
 * Checks format, version and units of a JSON value and brings it up to the newest version.
 *
 * @param value - any JSON value
 * @param history - the format that it must have, its newest version and the steps to there
 * @returns the raw document of the newest version, or the problem that ends the reading
 */
export function readDocument(value: unknown, history: VersionHistory): ReadDocument {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    const message = `holds ${showValue(value)}; it must hold one object in {}`;
    return refuse('the file', message);
  }
  const document = value as RawDocument;
  if (document['format'] !== history.format) {
    const found = document['format'] === undefined ? 'missing' : showValue(document['format']);
    return refuse('format', `is ${found}; it must be "${history.format}"`);
  }
  const migrated = migrate(document, history);
  if (migrated.kind === 'refused') return refuse('version', migrated.message);
  return { kind: 'read', document: migrated.document };
}

function refuse(place: string, message: string) {
  return { kind: 'refused', problems: [{ place, message }] } as const;
}
