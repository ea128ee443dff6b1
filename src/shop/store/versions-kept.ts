// Which versions of a shop are kept: the last twenty, the last one of each earlier day, and what an
// older version of the program had written. So a bad evening of many edits does not drive out what
// was there the day before.

import type { ShopVersion } from './shop-store.ts';

/** Versions that are kept whatever their age. */
export const LAST_VERSIONS = 20;
/** Earlier days of which the last version is kept. */
const DAYS = 10;
/** Versions from before a migration that are kept. */
const MIGRATIONS = 5;
const DAY = 86_400_000;

type Mark = Pick<ShopVersion, 'aside' | 'cause'>;

/**
 * The versions that are kept no longer.
 *
 * @param versions - all of one shop, in any order
 * @returns those that are to go
 */
export function surplusVersions<T extends Mark>(versions: readonly T[]): T[] {
  const latestFirst = versions.toSorted((a, b) => b.aside - a.aside);
  const earlier = latestFirst.slice(LAST_VERSIONS);
  const lastOfDay = new Map<number, T>();
  for (const version of earlier) {
    const day = Math.floor(version.aside / DAY);
    if (!lastOfDay.has(day)) lastOfDay.set(day, version);
  }
  const kept = new Set<T>([
    ...[...lastOfDay.values()].slice(0, DAYS),
    ...earlier.filter(({ cause }) => cause === 'migration').slice(0, MIGRATIONS),
  ]);
  return earlier.filter((version) => !kept.has(version));
}
