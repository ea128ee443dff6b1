// Typed or pasted text brought to the few plain characters that the reader of numbers knows:
// curly quotes and primes, odd spaces, dashes for minus, ready-made fractions.
//
// Source: Unicode Standard Annex 15, compatibility normalisation (NFKC), applied only after the
// characters that it would spoil have been dealt with: it turns 12½ into 121⁄2.

/**
 * Text in plain characters: `'` and `"` for feet and inches, `-` for minus, `/` in fractions with a
 * space before them, `^` before a raised digit, single spaces.
 * @param text - any text
 * @returns the tidied text, trimmed
 * @example tidyText('12½'); // => '12 1/2'
 * @example tidyText('4’ – 3”'); // => '4\' - 3"'
 */
export function tidyText(text: string): string {
  return text
    .replace(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g, '')
    .replace(/´/g, "'")
    .replace(/º/g, '°')
    .replace(/[⁰¹²³⁴-⁹]+⁄[₀-₉]+|[¼-¾⅐-⅟↉]/g, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .replace(/[⁰¹²³⁴-⁹]+/g, '^$&')
    .normalize('NFKC')
    .replace(/⁄/g, '/')
    .replace(/[‘’‚‛′ʹʼ`]/g, "'")
    .replace(/[“”„‟ʺ]|''/g, '"')
    .replace(/[‐‑‒–—―−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}
