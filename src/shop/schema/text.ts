// Texts of the document: ids, which other parts refer to, and names and notes, which are free.

import { inWords, z } from './zod.ts';

// Written without Unicode classes, which not every reader of the JSON Schema knows.
const ID = /^[A-Za-z0-9][A-Za-z0-9._-]*$/;
// oxlint-disable-next-line no-control-regex -- control characters are what it keeps out
const ONE_LINE = /^[^\u0000-\u001f\u007f-\u009f]*$/;

const ID_RIGHT =
  'must be an id: 1 to 64 of A–Z, a–z, 0–9, hyphen, dot and underscore, the first a letter or digit';
const NAME_RIGHT = 'must be one line of text, 1 to 200 characters';
const NOTE_RIGHT = 'must be text of at most 10000 characters';

/**
 * An id: how other parts of the document refer to this one. It never changes, whatever the name
 * becomes.
 *
 * @param what - what it is the id of, or whom it names
 * @returns the schema
 */
export function idOf(what: string) {
  return z
    .string({ error: `${ID_RIGHT} (${what})` })
    .check(z.maxLength(64, { error: ID_RIGHT }), z.regex(ID, { error: ID_RIGHT }))
    .register(inWords, {
      description: `${what}: 1 to 64 of A–Z, a–z, 0–9, hyphen, dot and underscore.`,
    });
}

/**
 * A name for people to read: one line in any language.
 *
 * @param what - what it is the name of
 * @returns the schema
 */
export function nameOf(what: string) {
  return z
    .string({ error: NAME_RIGHT })
    .check(z.minLength(1, { error: NAME_RIGHT }), z.maxLength(200, { error: NAME_RIGHT }))
    .check(z.regex(ONE_LINE, { error: NAME_RIGHT }))
    .register(inWords, { description: `${what}, free text of one line in any language.` });
}

/** A remark of any length a person would write. */
export const note = z
  .string({ error: NOTE_RIGHT })
  .check(z.maxLength(10_000, { error: NOTE_RIGHT }))
  .register(inWords, { description: 'A remark for people; nothing is computed from it.' });
