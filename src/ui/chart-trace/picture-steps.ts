// Steps over the picture of a chart by arrow keys, and its edges.

import type { Place } from '../../plot/frame.ts';
import type { ChartImage } from './chart-image.ts';

/** How far an arrow moves with Shift; without, it is a pixel of the picture [px]. */
const LONG_STEP = 10;

const WAYS: Readonly<Record<string, Place>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** How far a key moves [px of the picture]; undefined where it is no arrow. */
export function keyStep({ key, shiftKey }: KeyboardEvent): Place | undefined {
  const way = WAYS[key];
  const step = shiftKey ? LONG_STEP : 1;
  return way && { x: step * way.x, y: step * way.y };
}

/** The nearest place on the picture [px]. */
export function within({ x, y }: Place, { width, height }: ChartImage): Place {
  return { x: Math.min(width, Math.max(0, x)), y: Math.min(height, Math.max(0, y)) };
}
