// How large the picture of a chart is shown.

/** How many times the width of the page's column it can be. */
export const ZOOMS = [1, 2, 4] as const;

export type Zoom = (typeof ZOOMS)[number];
