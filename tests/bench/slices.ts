// How to time two things on a machine that others use too: in processor time of this process, which
// waits don't count in, and in many short slices taken in turn, of which a low decile counts. Other
// programs still empty the caches; what is disturbed is longer, never shorter.

const DECILE = 0.1;

/** Processor time that a function takes [ms]. */
export function timed(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The time that a tenth of the slices stay under [ms]. */
export function undisturbed(slices: readonly number[]): number {
  const sorted = slices.toSorted((a, b) => a - b);
  return sorted[Math.floor(DECILE * sorted.length)] ?? Number.NaN;
}
