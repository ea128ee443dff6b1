// What a page leaves behind when it goes in the midst of writing. The database drops transactions that
// still wait for their turn when the page is gone; a text in local storage is there at once. It is
// read when the page is opened next.

import type { ShopRecord, Writing } from './shop-store.ts';

const KEY = 'dropcurve-last-words';

/**
 * Leaves records behind. Where the browser refuses, the database alone is the net.
 *
 * @param writings - what is not written yet
 */
export function leaveLastWords(writings: readonly Writing[]): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(writings.map(({ record }) => record)));
  } catch {
    // No room, or none allowed.
  }
}

/**
 * Finds what the last page left behind.
 *
 * @returns the records, with the revisions that they were made from
 */
export function lastWords(): readonly ShopRecord[] {
  try {
    const words: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(words) ? words.filter(isRecord) : [];
  } catch {
    return [];
  }
}

/** Takes away what the last page left behind. */
export function forgetLastWords(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // They are older than what is kept by then, and lose against it.
  }
}

/**
 * Whether what a page left behind is later than what is kept.
 *
 * @param word - with the revision that it was made from
 * @param kept - under the same id
 * @returns whether it was made from what is kept, or from what that was made from and later
 */
export function isLater(word: ShopRecord, kept: ShopRecord | undefined): boolean {
  const from = word.revision ?? 0;
  const there = kept?.revision ?? 0;
  return from >= there || (from + 1 === there && word.written >= (kept?.written ?? 0));
}

function isRecord(value: unknown): value is ShopRecord {
  return (
    typeof value === 'object' &&
    value !== null &&
    'document' in value &&
    typeof Reflect.get(value, 'id') === 'string' &&
    Number.isFinite(Reflect.get(value, 'written')) &&
    Number.isFinite(Reflect.get(value, 'revision'))
  );
}
