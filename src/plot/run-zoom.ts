// How far the drawing of a run is drawn apart, and which part of it then shows. Words and line
// weights keep their size; it is the paper between them that grows.

/** What shows of the drawing. */
export interface RunView {
  /** How many times the size of its window the drawing is, 1 or more [-] */
  readonly zoom: number;
  /** How far it is scrolled from its left and top edge [px] */
  readonly left: number;
  readonly top: number;
}

/** The whole run. */
export const WHOLE_RUN: RunView = { zoom: 1, left: 0, top: 0 };
/** Drawn further apart, ducts would lose one another [-]. */
export const MOST_ZOOM = 6;
/** One press of a button or a key zooms so much [-]. */
export const ZOOM_STEP = 1.5;

/**
 * Zooms so that what lies under a place stays under it.
 *
 * @param view - what shows now
 * @param zoom - wanted zoom; kept from 1 to 6 [-]
 * @param place - from the window's left and top edge [px]
 * @returns what shows then
 * @example
 * zoomedAbout({ zoom: 1, left: 0, top: 0 }, 2, { x: 50, y: 10 }).left; // => 50
 * zoomedAbout({ zoom: 2, left: 50, top: 10 }, 1, { x: 50, y: 10 }).left; // => 0
 */
export function zoomedAbout(
  view: RunView,
  zoom: number,
  place: { readonly x: number; readonly y: number },
): RunView {
  const kept = Math.min(MOST_ZOOM, Math.max(1, zoom));
  const growth = kept / view.zoom;
  return {
    zoom: kept,
    left: Math.max(0, (view.left + place.x) * growth - place.x),
    top: Math.max(0, (view.top + place.y) * growth - place.y),
  };
}
