// The sizes that the sections of a main may have where none is narrower than what empties into it.

/** Sections of a main, and how wide they may be. */
export interface Tapers {
  /** Position of the next section of the main downstream of each, or -1 [-] */
  readonly next: readonly number[];
  /** Position of the widest size, by rising diameter [-] */
  readonly widest: number;
}

/**
 * How many there are, counted no further than just past a limit.
 *
 * @param tapers - sections and sizes
 * @param limit - where counting ends [-]
 * @returns their number, or the limit and 1 [-]
 */
export function countTapers(tapers: Tapers, limit: number): number {
  let count = 0;
  for (const _ of everyTaper(tapers)) {
    count += 1;
    if (count > limit) break;
  }
  return count;
}

/**
 * Every main that nowhere gets narrower toward the collector.
 *
 * @param tapers - sections and sizes
 * @returns position of the size of each section [-], main by main
 */
export function* everyTaper({ next, widest }: Tapers): Generator<readonly number[], void, void> {
  const inward = inwardFirst(next);
  const chosen = next.map(() => 0);
  function* from(k: number): Generator<readonly number[], void, void> {
    const at = inward[k];
    if (at === undefined) {
      yield [...chosen];
      return;
    }
    const most = next[at]! < 0 ? widest : chosen[next[at]!]!;
    for (let size = 0; size <= most; size++) {
      chosen[at] = size;
      yield* from(k + 1);
    }
  }
  yield* from(0);
}

/** Positions of the sections, each after the one that it leads to. */
function inwardFirst(next: readonly number[]): number[] {
  const depth = (at: number): number => (next[at]! < 0 ? 0 : 1 + depth(next[at]!));
  return [...next.keys()].toSorted((a, b) => depth(a) - depth(b));
}

/**
 * A main with one section of another size: all downstream of it is as wide at least, all upstream at
 * most.
 *
 * @param next - of each section the one downstream, or -1 [-]
 * @param sizes - position of the size of each section [-]
 * @param section - which one is changed [-]
 * @param size - position of its size [-]
 * @returns positions of the sizes [-]
 */
export function withSize(
  next: readonly number[],
  sizes: readonly number[],
  section: number,
  size: number,
): readonly number[] {
  return sizes.map((each, i) => {
    if (i === section) return size;
    if (leadsTo(next, section, i)) return Math.max(each, size);
    return leadsTo(next, i, section) ? Math.min(each, size) : each;
  });
}

function leadsTo(next: readonly number[], from: number, to: number): boolean {
  for (let i = from; i >= 0; i = next[i]!) if (i === to) return true;
  return false;
}
