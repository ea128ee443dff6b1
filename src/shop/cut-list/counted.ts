// Parts that are alike, counted: one line for each key.

/** What is bought by the piece. */
export interface Counted {
  /** Names the item from one cut list to the next, for its price. */
  readonly key: string;
  /** How many [-] */
  readonly amount: number;
}

/**
 * Adds up the lines of each key.
 *
 * @param lines - parts as they are met on the way through the shop
 * @returns each kind once, in the order of the first
 */
export function countAlike<Line extends Counted>(lines: readonly Line[]): Line[] {
  const kinds = new Map<string, Line>();
  for (const line of lines) {
    const met = kinds.get(line.key);
    kinds.set(line.key, met ? { ...met, amount: met.amount + line.amount } : line);
  }
  return [...kinds.values()];
}
