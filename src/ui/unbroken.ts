// A number stays with its unit at the end of a line, feet stay with their inches, and a unit stays whole.

/**
 * Words without a space that breaks within a quantity.
 *
 * @param words - a sentence
 * @returns the same, its thin spaces narrow ones that don't break, and none that does after feet or
 *   within "in. w.g."
 * @example
 * unbroken('air at 10\' 0"'); // => 'air at 10\'\u00a00"'
 */
export function unbroken(words: string): string {
  return words
    .replaceAll('\u2009', '\u202f')
    .replaceAll('in. w.g.', 'in.\u00a0w.g.')
    .replaceAll(/(\d') (?=\d)/g, '$1\u00a0');
}
