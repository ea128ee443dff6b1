// How much of the processors' time other machines on the same hardware took meanwhile. Chromium slows
// the page by the clock on the wall, so what is stolen from a slowed frame counts several times over.

import { readFileSync } from 'node:fs';

/** As Linux counts them since the start, all processors together. */
interface Ticks {
  readonly all: number;
  readonly stolen: number;
}

/** Place of stolen time in the first line of /proc/stat, after its name. */
const STOLEN = 7;

/**
 * Begins to count.
 *
 * @returns tells the share of time that was stolen since, 0 where the system doesn't say [-]
 */
export function stolenSince(): () => number {
  const before = ticks();
  return () => {
    const now = ticks();
    return now.all > before.all ? (now.stolen - before.stolen) / (now.all - before.all) : 0;
  };
}

function ticks(): Ticks {
  try {
    const [line = ''] = readFileSync('/proc/stat', 'utf8').split('\n', 1);
    const counts = line.trim().split(/\s+/).slice(1).map(Number);
    return {
      all: counts.slice(0, STOLEN + 1).reduce((sum, count) => sum + count, 0),
      stolen: counts[STOLEN] ?? 0,
    };
  } catch {
    return { all: 0, stolen: 0 }; // not Linux
  }
}
