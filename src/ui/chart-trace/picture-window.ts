// From places on the page to places on the picture of a chart and back. A larger picture is seen through
// a window, in which it scrolls and in whose corners the loupe stands.

import type { Place } from '../../plot/frame.ts';
import type { ChartImage } from './chart-image.ts';
import { within } from './picture-steps.ts';

/** The loupe with the room around it: what `chart-picture.styles.ts` gives it [px]. */
const LOUPE = { wide: 128, narrow: 92 };
const NARROW = '(max-width: 37.4375em)';

/** Where on the picture a pointer is, to a tenth of its pixels. */
export function placeUnder(event: MouseEvent, picture: Element, image: ChartImage): Place {
  const { left, top, width, height } = picture.getBoundingClientRect();
  const x = ((event.clientX - left) / width) * image.width;
  const y = ((event.clientY - top) / height) * image.height;
  return within({ x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10 }, image);
}

/** From places on the picture to places in its window, as it is scrolled now [px]. */
export function seenThrough(
  window: Element,
  picture: Element,
  image: ChartImage,
): (place: Place) => Place {
  const frame = window.getBoundingClientRect();
  const { left, top, width } = picture.getBoundingClientRect();
  const scale = width / image.width;
  return ({ x, y }) => ({ x: left - frame.left + x * scale, y: top - frame.top + y * scale });
}

export function sizeOfWindow(window: Element): { readonly width: number; readonly height: number } {
  return { width: window.clientWidth, height: window.clientHeight };
}

/** How wide and high the loupe is with the room around it [px]. */
export function loupeSize(): number {
  return matchMedia(NARROW).matches ? LOUPE.narrow : LOUPE.wide;
}
