// A number stays with its unit at the end of a line: no space between them that breaks.

/**
 * Words whose numbers keep their units.
 *
 * @param words - words with thin spaces between numbers and units, or with sizes of pipe
 * @returns the same with spaces there that don't break
 */
export function unbroken(words: string): string {
  return words.replaceAll('\u2009', '\u202f').replace(/(\d) (in\.|mm\b)/g, '$1\u00a0$2');
}
