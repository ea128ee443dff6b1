// One value as the text of a cell. Words that most shops have stand as two characters.

import { longNumber, shortNumber } from './short-number.ts';
import { LinkFault } from './fault.ts';
import { WORDS } from './words.ts';

/** A value that holds no others. */
export type Cell = string | number | boolean | null;

const MARK = '\\';
/** Marks a text that would be read as something else. */
const QUOTE = "'";
const TRUE = `${MARK}1`;
const FALSE = `${MARK}0`;
const NULL = `${MARK}.`;
/** Stand for what may not stand in a cell. */
const [TAB, NEWLINE] = ['\u0001', '\u0002'];
/** The first character of words, by their place in the list. */
const FIRST_LETTER = 'A'.charCodeAt(0);

/**
 * Writes a cell.
 *
 * @param value - the value; undefined where there is none
 * @returns its text, without tab or newline
 */
export function cellText(value: Cell | undefined): string {
  if (value === undefined) return '';
  if (value === null) return NULL;
  if (typeof value === 'boolean') return value ? TRUE : FALSE;
  if (typeof value === 'number') return shortNumber(value);
  const place = WORDS.indexOf(value);
  if (place >= 0) return MARK + String.fromCharCode(FIRST_LETTER + place);
  const needsQuote = value === '' || /^[\\'=]/.test(value) || longNumber(value) !== undefined;
  const plain = value.replaceAll('\t', TAB).replaceAll('\n', NEWLINE);
  return needsQuote ? QUOTE + plain : plain;
}

/**
 * Reads a cell.
 *
 * @param text - by `cellText`
 * @returns the value; undefined where there is none
 * @throws LinkFault if the text is none of a cell
 */
export function cellValue(text: string): Cell | undefined {
  if (text === '') return undefined;
  if (text.startsWith(QUOTE)) return unescaped(text.slice(1));
  if (!text.startsWith(MARK)) return longNumber(text) ?? unescaped(text);
  if (text === NULL) return null;
  if (text === TRUE || text === FALSE) return text === TRUE;
  const word = WORDS[text.charCodeAt(1) - FIRST_LETTER];
  if (word === undefined || text.length !== 2) throw new LinkFault('a word is not known');
  return word;
}

function unescaped(text: string): string {
  return text.replaceAll(TAB, '\t').replaceAll(NEWLINE, '\n');
}
