// Words in a row as a sentence lists them.

/**
 * A list in words.
 *
 * @param words - the words
 * @returns such as 'Planer, Lathe and Table saw'
 */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/**
 * A list of names in words as long as they are few, else their number.
 *
 * @param names - the names
 * @param most - up to how many are named [-]
 * @param noun - what they are, in the plural
 * @returns such as 'Planer and Lathe' or '7 drops'
 */
export function namedOrCounted(names: readonly string[], most: number, noun: string): string {
  return names.length > most ? `${names.length} ${noun}` : listed(names);
}
