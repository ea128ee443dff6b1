// Numbers as few characters. What was typed in feet, inches or cfm is a long decimal in SI; where it
// is exactly a short number of such a unit, that is written with a letter for the unit.

/** A letter and the size of the unit in SI. Never changed: links hold them. */
const UNITS: Readonly<Record<string, number>> = {
  c: 4.719474432e-4, // cfm
  w: 249.08891, // in. of water
  f: 0.3048, // ft
  i: 0.0254, // in.
  s: 0.0015875, // 1/16 in.
  v: 0.00508, // ft/min
  h: 1 / 3600, // m³/h
  m: 0.001, // mm
};

/**
 * A number as a text that `longNumber` reads to exactly the same number.
 *
 * @param value - a finite number
 * @returns the shortest text found
 */
export function shortNumber(value: number): string {
  const texts = Object.entries(UNITS).flatMap(([letter, unit]) => {
    const count = Number((value / unit).toPrecision(8));
    return count * unit === value ? [`${plain(count)}${letter}`] : [];
  });
  return [plain(value), ...texts].reduce((best, text) => (text.length < best.length ? text : best));
}

/**
 * The number that a text stands for.
 *
 * @param text - by `shortNumber`, or anything
 * @returns the number, or undefined where the text is none
 */
export function longNumber(text: string): number | undefined {
  const [, digits = '', letter = ''] = /^(-?[\d.]+(?:e[+-]?\d+)?)([a-z]?)$/.exec(text) ?? [];
  const count = Number(digits);
  const unit = letter === '' ? 1 : UNITS[letter];
  return digits === '' || unit === undefined || Number.isNaN(count) ? undefined : count * unit;
}

function plain(value: number): string {
  return String(value).replace(/^(-?)0\./, '$1.');
}
