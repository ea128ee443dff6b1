// What a list of earlier versions says of each: in what it differs from the shop as it was after it.

import { shelved } from './shelved.ts';
import type { ShopVersion } from '../shop/store/shop-store.ts';

/** A version and what to say of it. */
export interface VersionRow {
  readonly version: ShopVersion;
  readonly difference: string;
}

/** Parts of a shop document, as words. */
const PARTS: Readonly<Record<string, string>> = {
  name: 'another name',
  note: 'another note',
  air: 'other air',
  collector: 'another collector',
  carryingRange: 'another carrying range',
  gateSets: 'other gate sets',
};
/** Lists of parts that are counted, and what one of them is called. */
const LISTS: Readonly<Record<string, string>> = { sections: 'section', drops: 'drop' };

/**
 * The rows of the list.
 *
 * @param now - the shop as it is now
 * @param versions - what was set aside, the latest first
 * @returns a row for each
 */
export function versionRows(now: unknown, versions: readonly ShopVersion[]): VersionRow[] {
  return versions.map((version, i) => ({
    version,
    difference: difference(version, versions[i - 1]?.document ?? now),
  }));
}

function difference({ cause, document, aside }: ShopVersion, after: unknown): string {
  const entry = shelved({ id: '', document, written: aside });
  if (entry.kind === 'unreadable') return 'can’t be opened; its file can be saved';
  if (cause === 'migration') return 'before this version of the page opened it';
  if (cause === 'other tab') return 'from another tab, edited at the same time';
  const parts = [...listDifferences(document, after), ...partDifferences(document, after)];
  return parts.length === 0 ? 'the same as the one after it' : parts.join(', ');
}

function listDifferences(one: unknown, other: unknown): string[] {
  return Object.entries(LISTS).flatMap(([key, word]) => {
    const [before, after] = [part(one, key), part(other, key)];
    if (!Array.isArray(before) || !Array.isArray(after)) return [];
    const more = before.length - after.length;
    if (more !== 0) return [`${counted(Math.abs(more), word)} ${more > 0 ? 'more' : 'fewer'}`];
    const changed = before.filter((each, i) => !isSame(each, after[i])).length;
    return changed === 0 ? [] : [`${counted(changed, word)} different`];
  });
}

function partDifferences(one: unknown, other: unknown): string[] {
  return Object.entries(PARTS).flatMap(([key, words]) =>
    isSame(part(one, key), part(other, key)) ? [] : [words],
  );
}

function part(document: unknown, key: string): unknown {
  return typeof document === 'object' && document !== null ? Reflect.get(document, key) : undefined;
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function counted(count: number, word: string): string {
  return count === 1 ? `1 ${word}` : `${count} ${word}s`;
}
