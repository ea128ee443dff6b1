// A number stays with its unit at the end of a line.

/**
 * Words without a thin space that breaks.
 *
 * @param words - a sentence
 * @returns the same, its thin spaces narrow ones that don't break
 */
export function unbroken(words: string): string {
  return words.replaceAll('\u2009', '\u202f');
}
