// A drawn canvas as a picture to trace from.

import type { ChartImage } from './chart-image.ts';

/** Longer sides are made as short as this [px]. */
export const LONGEST_SIDE = 3000;

/**
 * Draws something on white, and gives it an address within this page.
 *
 * @param width - [px]
 * @param height - [px]
 * @param draw - draws on a canvas of that size, then is done with it
 * @returns the picture
 */
export async function drawnImage(
  width: number,
  height: number,
  draw: (canvas: HTMLCanvasElement) => Promise<void> | void,
): Promise<ChartImage> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('there is no canvas to draw on');
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  await draw(canvas);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
  // Some browsers keep what a canvas takes until it is small.
  canvas.width = 0;
  if (!blob) throw new Error('the drawing could not be made a picture');
  return { url: URL.createObjectURL(blob), width, height };
}
