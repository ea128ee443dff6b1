// What a person may have meant by a word that is not known: the known word fewest typing slips away.
//
// 1. V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707–710: the count of slips.

/** With more known words than this, a search through them all would cost more than it helps. */
const MOST_KNOWN = 300;

/**
 * The known words most like a given one, the most alike first.
 *
 * @param word - what was written
 * @param known - what could have been meant
 * @param most - how many to give at most, 1 or more [-]
 * @returns known words within about a third of their length in slips; may be empty
 */
export function nearestWords(word: string, known: readonly string[], most = 3): readonly string[] {
  if (known.length > MOST_KNOWN) return [];
  const written = word.slice(0, 64).toLowerCase();
  return known
    .map((candidate) => ({ candidate, slips: slipsBetween(written, candidate.toLowerCase()) }))
    .filter(({ candidate, slips }) => slips <= Math.max(2, candidate.length / 3))
    .toSorted((a, b) => a.slips - b.slips)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/**
 * '; did you mean "planer"?' for the end of a message, or nothing if no known word is near.
 *
 * @param word - what was written
 * @param known - what could have been meant
 * @returns a question that begins with a semicolon, or an empty string
 */
export function didYouMean(word: string, known: readonly string[]): string {
  const words = nearestWords(word, known).map((near) => `"${near}"`);
  if (words.length === 0) return '';
  return `; did you mean ${words.join(' or ')}?`;
}

function slipsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 0; i < a.length; i++) {
    const next = [i + 1];
    for (let j = 0; j < b.length; j++) {
      const swap = (row[j] ?? 0) + (a[i] === b[j] ? 0 : 1);
      next.push(Math.min(swap, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
