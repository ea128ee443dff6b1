// Where a loupe stands over the picture of a chart: in a corner in which it hides nothing that counts.

import type { Place } from '../frame.ts';

/** A corner of the window that the picture is seen through. */
export interface Corner {
  readonly side: 'left' | 'right';
  readonly edge: 'top' | 'bottom';
}

const CORNERS: readonly Corner[] = [
  { side: 'left', edge: 'top' },
  { side: 'right', edge: 'top' },
  { side: 'left', edge: 'bottom' },
  { side: 'right', edge: 'bottom' },
];

/**
 * The corner for a loupe: never over the place that it shows where another is free, then where the
 * fewest marks are hidden, then farthest from the place.
 *
 * @param place - what the loupe shows [px of the window]
 * @param marks - what should be seen [px of the window]
 * @param window - width and height [px]
 * @param size - of the loupe with the room around it [px]
 * @returns the corner
 */
export function loupeCorner(
  place: Place,
  marks: readonly Place[],
  window: { readonly width: number; readonly height: number },
  size: number,
): Corner {
  const hides = ({ side, edge }: Corner, { x, y }: Place) => {
    const left = side === 'left' ? 0 : window.width - size;
    const top = edge === 'top' ? 0 : window.height - size;
    return x >= left && x <= left + size && y >= top && y <= top + size;
  };
  const cost = (corner: Corner) => {
    const away = Math.hypot(
      place.x - (corner.side === 'left' ? 0 : window.width),
      place.y - (corner.edge === 'top' ? 0 : window.height),
    );
    const hidden = marks.filter((mark) => hides(corner, mark)).length;
    const part = away / Math.hypot(window.width, window.height);
    return (hides(corner, place) ? 1000 : 0) + hidden - part;
  };
  return CORNERS.reduce((best, corner) => (cost(corner) < cost(best) ? corner : best));
}
