// How large a line of text will come out, near enough to keep it clear of lines. Measuring it in
// the page would force a layout in every frame.

import type { LabelSize } from '../../plot/place-label.ts';

/**
 * Widths of characters over the font size [-], those of DejaVu Sans and rather over than under them: of
 * the fonts that a page without its own is written in, it is the widest.
 */
const WIDTHS: readonly (readonly [characters: string, width: number])[] = [
  ['\u2009\u202f', 0.2],
  ["ijl'.,:;| \u00b7\u00a0", 0.32],
  ['frt"()/°-−–', 0.46],
  ['ABCDEFGHIJKLMNOPQRSTUVXYZ×+=', 0.78],
  ['mwMW%@', 0.98],
];
const WIDTH_OF: ReadonlyMap<string, number> = new Map(
  WIDTHS.flatMap(([characters, width]) =>
    characters.split('').map((character) => [character, width] as const),
  ),
);
const USUAL_WIDTH = 0.64;
/** How much wider bold letters are [-]. */
export const BOLD = 1.12;
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
  let width = 0;
  for (const character of text) width += WIDTH_OF.get(character) ?? USUAL_WIDTH;
  return { width: width * fontSize, height: HEIGHT_OVER_SIZE * fontSize };
}
