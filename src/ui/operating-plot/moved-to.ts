// Puts SVG content at a place by a transform of its group, which spares its texts a new layout in every frame.

/**
 * A transform to a place.
 *
 * @param x - from the left [px]
 * @param y - from the top [px]
 * @returns the value of a `transform` attribute, rounded to a hundredth of a pixel
 * @example
 * movedTo(12.3456, 7); // => 'translate(12.35 7)'
 */
export function movedTo(x: number, y: number): string {
  return `translate(${Math.round(100 * x) / 100} ${Math.round(100 * y) / 100})`;
}
