// How large a line of text will come out, near enough to keep it clear of lines. Measuring it in
// the page would force a layout in every frame.

import type { LabelSize } from '../../plot/place-label.ts';

/** Mean width of a character of a plain sans serif over the font size, on the wide side [-]. */
const WIDTH_OVER_SIZE = 0.58;
const HEIGHT_OVER_SIZE = 1.2;

/**
 * Estimates the size of a line of text.
 *
 * @param text - what is written
 * @param fontSize - its size [px]
 * @returns width and height [px]; the width is rather over than under what it will be
 * @example
 * textSize('1,200', 10).height; // => 12
 */
export function textSize(text: string, fontSize: number): LabelSize {
  return {
    width: text.length * WIDTH_OVER_SIZE * fontSize,
    height: HEIGHT_OVER_SIZE * fontSize,
  };
}
