// A drawing of where to hold the instrument: the pipe from the side with the straight stretches that
// it wants, and its bore with the places of a traverse.

/** A place in the bore [px]. */
export interface HoldPlace {
  readonly x: number;
  readonly y: number;
}

/** The drawing [px]. */
export interface HoldDrawing {
  readonly width: number;
  readonly height: number;
  /** The pipe from the side: its walls reach from x to x + length. */
  readonly pipe: {
    readonly x: number;
    readonly y: number;
    readonly length: number;
    readonly bore: number;
  };
  /** Where the tap and the readings are, along the pipe. */
  readonly reading: number;
  /** The bore, cut through. */
  readonly cut: { readonly x: number; readonly y: number; readonly radius: number };
  /** Ends of each diameter that is traversed. */
  readonly diameters: readonly (readonly [HoldPlace, HoldPlace])[];
  readonly places: readonly HoldPlace[];
}

const BORE = 26;
const RADIUS = 48;
const MARGIN = 8;

/**
 * Lays out the drawing.
 *
 * @param before - straight pipe before the place of reading, in diameters [-]
 * @param after - straight pipe after it, in diameters [-]
 * @param positions - distances from the near wall over the diameter [-]
 * @param diameters - how many diameters are traversed [-]
 * @returns all places [px]
 */
export function holdDrawing(
  before: number,
  after: number,
  positions: readonly number[],
  diameters: number,
): HoldDrawing {
  const length = (before + after) * BORE;
  const cut = { x: MARGIN + length + 2 * MARGIN + RADIUS, y: MARGIN + RADIUS, radius: RADIUS };
  const lines = Array.from({ length: diameters }, (_, i) => {
    // One diameter stands upright, two are crossed upright and level, three are a star.
    const angle = Math.PI / 2 + (i * Math.PI) / diameters;
    const at = (part: number) => ({
      x: cut.x - (1 - 2 * part) * RADIUS * Math.cos(angle),
      y: cut.y - (1 - 2 * part) * RADIUS * Math.sin(angle),
    });
    return { ends: [at(0), at(1)] as const, places: positions.map(at) };
  });
  return {
    width: cut.x + RADIUS + MARGIN,
    height: 2 * (MARGIN + RADIUS),
    pipe: { x: MARGIN, y: cut.y - BORE / 2, length, bore: BORE },
    reading: MARGIN + before * BORE,
    cut,
    diameters: lines.map(({ ends }) => ends),
    places: lines.flatMap(({ places }) => places),
  };
}
