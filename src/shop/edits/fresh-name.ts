// A name for a copy: the same words with the next number behind them.

/**
 * A name that nothing has yet.
 *
 * @param wish - a name, perhaps with a number at its end
 * @param taken - names that are taken
 * @returns the wish, or its words with the lowest number from 2 that is free
 * @example
 * freshName('Lathe', ['Lathe']); // => 'Lathe 2'
 * freshName('Lathe 2', ['Lathe', 'Lathe 2']); // => 'Lathe 3'
 */
export function freshName(wish: string, taken: readonly string[]): string {
  if (!taken.includes(wish)) return wish;
  const words = wish.replace(/ \d{1,4}$/, '').slice(0, 190);
  let number = 2;
  while (taken.includes(`${words} ${number}`)) number += 1;
  return `${words} ${number}`;
}
