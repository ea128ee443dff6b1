// The ruled rectangle that a plot is drawn in, and how values become places on the page.
// Places are in [px] of the drawing, y down; values are in SI.

/** A rectangle on the page [px]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A place on the page [px]. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * The square that a mark keeps free.
 *
 * @param place - the mark's centre [px]
 * @param room - half its side [px]
 * @returns the square [px]
 */
export function boxAround({ x, y }: Place, room: number): Box {
  return { left: x - room, top: y - room, right: x + room, bottom: y + room };
}

/** A plot of suction over flow: its inner rectangle and its two scales, both starting at 0. */
export interface PlotFrame {
  readonly inner: Box;
  readonly flowEnd: number;
  readonly pressureEnd: number;
  /** Flow [m³/s] to its place from the left [px]. */
  readonly x: (flow: number) => number;
  /** Pressure [Pa] to its place from the top [px]. */
  readonly y: (pressure: number) => number;
}

/**
 * Rules a frame. Scales are straight lines from 0 and go on outside the rectangle.
 *
 * @param inner - where the axes stand [px]
 * @param flowEnd - flow at the right edge, above 0 [m³/s]
 * @param pressureEnd - pressure at the top edge, above 0 [Pa]
 * @returns the frame
 * @throws RangeError if an end is not above 0
 */
export function plotFrame(inner: Box, flowEnd: number, pressureEnd: number): PlotFrame {
  if (!(flowEnd > 0)) throw new RangeError(`the flow axis must end above 0, not at ${flowEnd}`);
  if (!(pressureEnd > 0)) {
    throw new RangeError(`the pressure axis must end above 0, not at ${pressureEnd}`);
  }
  const across = (inner.right - inner.left) / flowEnd;
  const up = (inner.bottom - inner.top) / pressureEnd;
  return {
    inner,
    flowEnd,
    pressureEnd,
    x: (flow) => inner.left + across * flow,
    y: (pressure) => inner.bottom - up * pressure,
  };
}
