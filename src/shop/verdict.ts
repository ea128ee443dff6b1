// What a drop's flow and speeds amount to, in one word.

/** The word for a drop in one state of the gates. */
export type Verdict = 'shut' | 'settles' | 'short' | 'tight' | 'carries';

/** What a verdict is reached from. */
export interface DropCondition {
  readonly open: boolean;
  /** Flow into the drop [m³/s] */
  readonly flow: number;
  /** Flow that catches the dust [m³/s], if anybody said */
  readonly need: number | undefined;
  /** Speed in the drop's own pipe [m/s] */
  readonly velocity: number;
  /** Lowest speed on the way to the collector [m/s] */
  readonly slowest: number;
}

/**
 * The verdict on a drop. What hurts most comes first: chips that settle anywhere on the way, then
 * too little air at the machine, then a pipe so fast that it throttles the collector.
 *
 * @param drop - flow and speeds of the drop
 * @param range - the carrying range [m/s]
 * @returns 'carries' if nothing is wrong
 */
export function verdictOn(
  drop: DropCondition,
  range: { readonly low: number; readonly high: number },
): Verdict {
  if (!drop.open) return 'shut';
  if (drop.slowest < range.low) return 'settles';
  if (drop.need !== undefined && drop.flow < drop.need) return 'short';
  if (drop.velocity > range.high) return 'tight';
  return 'carries';
}
