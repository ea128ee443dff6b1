// An id for a new part: like the word that was wished for, but one that nothing has yet.

import { COLLECTOR_ID } from '../collector-id.ts';

const LONGEST = 56;

/**
 * An id that is not taken.
 *
 * @param wish - a name or an id to begin from, in any language
 * @param taken - ids that are taken
 * @returns the wish in small letters, digits and hyphens, with a number behind it if need be
 */
export function freshId(wish: string, taken: readonly string[]): string {
  const plain = wish
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, LONGEST);
  const stem = plain === '' ? 'part' : plain;
  const isFree = (id: string) => id !== COLLECTOR_ID && !taken.includes(id);
  if (isFree(stem)) return stem;
  let number = 2;
  while (!isFree(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
