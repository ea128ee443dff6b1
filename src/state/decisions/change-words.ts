// Gains and losses as they stand in a table.

/** A smaller change is none [-]. */
const LEAST = 0.005;

/**
 * A change over what was.
 *
 * @param share - change over what was, below 0 for less [-]
 * @returns such as '+12 %', '−4 %' or 'as today'
 */
export function changeWords(share: number): string {
  if (!Number.isFinite(share) || Math.abs(share) < LEAST) return 'as today';
  const percent = Math.round(100 * Math.abs(share));
  return `${share < 0 ? '\u2212' : '+'}${percent}\u2009%`;
}
