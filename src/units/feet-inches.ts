// A length as a tape measure reads it: feet, inches and sixteenths.
// Source: the sixteenth is the finest common mark on a joiner's tape (common practice).

import { UNITS } from './unit.ts';

/** The finest mark shown, a sixteenth of an inch [m]. */
export const SIXTEENTH = UNITS.inch.size / 16;

/**
 * A length in feet, inches and the nearest sixteenth, the fraction reduced.
 * Under a foot the feet are left out. A minus sign is a true one.
 * @param length - the length [m]
 * @returns for example `12' 6 1/2"`
 * @example feetAndInches(3.8227); // => '12\' 6 1/2"'
 * @example feetAndInches(3.6703); // => '12\' 0 1/2"'
 * @example feetAndInches(0.0127); // => '1/2"'
 */
export function feetAndInches(length: number): string {
  const total = Math.round(Math.abs(length) / SIXTEENTH);
  const feet = Math.floor(total / 192);
  const sixteenths = total - 192 * feet;
  const inches = Math.floor(sixteenths / 16);
  const rest = sixteenths - 16 * inches;
  const sign = length < 0 && total > 0 ? '\u2212' : '';
  const whole = feet === 0 && inches === 0 && rest > 0 ? '' : String(inches);
  const inchText = `${whole} ${reduced(rest)}`.trim() + '"';
  return feet > 0 ? `${sign}${feet}' ${inchText}` : `${sign}${inchText}`;
}

function reduced(sixteenths: number): string {
  if (sixteenths === 0) {
    return '';
  }
  let top = sixteenths;
  let bottom = 16;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}
