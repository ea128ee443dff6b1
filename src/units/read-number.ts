// The number at the start of a text: decimal with a point or a comma, thousands marked or not,
// a fraction, or a whole number with a fraction as tapes are read.
//
// Source: SI Brochure, 9th edition (2019), section 5.4.4: the decimal mark is a point or a comma.
// So `1,200` has two meanings and both are returned. A lone point is always decimal: it is ours.

/** A number as read: where it ends in the text, and each value that it may have. */
export interface WrittenNumber {
  /** One value; two where a comma leaves it open, the one with a thousands comma first. [-] */
  readonly values: readonly number[];
  readonly end: number;
}

const MIXED = /(\d+)(?: | ?- ?)(\d+) ?\/ ?(\d+)/y;
const FRACTION = /(\d+) ?\/ ?(\d+)/y;
const DECIMAL = /(\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?|[\d.,]*\d[\d.,]*)(e[+-]?\d+)?/iy;

/**
 * Reads the number that starts at a place in tidied text. Never throws.
 * @param text - text from `tidyText`
 * @param start - where to begin [-]
 * @returns the number; without values if it is malformed, such as `1.2.3`; or undefined if no
 *   number begins there
 * @example readNumber('6 1/2 in', 0).values; // => [6.5]
 * @example readNumber('1,200', 0).values; // => [1200, 1.2]
 * @example readNumber('3,8 m', 0).values; // => [3.8]
 */
export function readNumber(text: string, start: number): WrittenNumber | undefined {
  const mixed = matchAt(MIXED, text, start);
  if (mixed !== null) {
    const [all, whole, top, bottom] = mixed;
    const value = Number(whole) + Number(top) / Number(bottom);
    return { values: finite([value]), end: start + all.length };
  }
  const fraction = matchAt(FRACTION, text, start);
  if (fraction !== null) {
    const [all, top, bottom] = fraction;
    return { values: finite([Number(top) / Number(bottom)]), end: start + all.length };
  }
  const decimal = matchAt(DECIMAL, text, start);
  if (decimal === null) {
    return undefined;
  }
  const [all, digits = '', exponent = ''] = decimal;
  const values = plainForms(digits).map((form) => Number(form + exponent));
  return { values: finite(values), end: start + all.length };
}

/** The meanings of digits with points, commas and spaces, as JavaScript would write them. */
function plainForms(written: string): readonly string[] {
  const digits = written.replaceAll(' ', '');
  const points = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (points > 0 && commas > 0) {
    const pointLast = digits.lastIndexOf('.') > digits.lastIndexOf(',');
    return pointLast ? groupsThenMark(digits, ',', '.') : groupsThenMark(digits, '.', ',');
  }
  if (points > 1 || commas > 1) {
    return groupsThenMark(digits, points > 1 ? '.' : ',', '');
  }
  if (commas === 0) {
    return [digits];
  }
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits) && written === digits) {
    return [digits.replace(',', ''), digits.replace(',', '.')];
  }
  return digits.endsWith(',') ? [] : [digits.replace(',', '.')];
}

/** `1.234.567,8` and its like: groups of three, then at most one decimal mark. */
function groupsThenMark(digits: string, group: string, mark: string): readonly string[] {
  const [whole = '', decimals = '', more] = mark === '' ? [digits] : digits.split(mark);
  const [first = '', ...others] = whole.split(group);
  const wellFormed =
    more === undefined && /^[1-9]\d{0,2}$/.test(first) && others.every((part) => part.length === 3);
  return wellFormed ? [`${first}${others.join('')}.${decimals}`] : [];
}

function finite(values: readonly number[]): readonly number[] {
  return values.every(Number.isFinite) ? values : [];
}

function matchAt(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}
