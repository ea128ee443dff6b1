// Places of the labels of the operating-point plot: found anew, or carried along with what they name.

import type { Knot } from './bezier-path.ts';
import { type Box, boxAround, type Place, type PlotFrame } from './frame.ts';
import { type Obstacles, type Stroke, strokesAlong, strokeStart } from './obstacles.ts';
import { boxAt, type LabelSize, type LabelSpot, placeAnywhere, placeLabel } from './place-label.ts';
import { type LineSpot, placeLineLabel } from './place-line-label.ts';
import type { RuledPlot } from './ruled-plot.ts';

/** How large the labels are. */
export interface LabelSizes {
  readonly point: LabelSize;
  readonly collector: LabelSize;
  readonly system: LabelSize;
  readonly trail: readonly LabelSize[];
}

/** Where labels stand as seen from what they name. */
export interface LabelSpots {
  readonly point: LabelSpot | undefined;
  readonly collector: LineSpot | undefined;
  readonly system: LineSpot | undefined;
}

/** Where labels stand [px]. */
export interface LabelBoxes {
  readonly point: Box | undefined;
  readonly collector: Box | undefined;
  readonly system: Box | undefined;
  readonly trail: readonly (Box | undefined)[];
}

/** What is labelled [px]. */
export interface LabelledMarks {
  readonly point: Place | undefined;
  readonly others: readonly Place[];
  readonly trail: readonly Place[];
  /** The part of the system curve that is in view. */
  readonly system: readonly Knot[];
}

/** Labels with where they stand as seen from what they name. */
export interface PlacedLabels {
  readonly spots: LabelSpots;
  readonly labels: LabelBoxes;
}

/** A name further from its mark would be taken for another's [px]. */
const TRAIL_DISTANCES = [10, 14, 20];
/** Half the side of the square that a mark keeps free of labels [px]. */
const POINT_ROOM = 11;
const MARK_ROOM = 6;
/** The system curve is nearly straight between its knots, and is drawn often [strokes a piece]. */
const SYSTEM_STROKES = 6;
/** Where a line's label is tried first, as parts of the way along it [-]. */
const COLLECTOR_LABEL_AT = [0.12, 0.2, 0.3, 0.05, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
const SYSTEM_LABEL_AT = [0.95, 0.88, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3];

/**
 * Labels where they stood, seen from marks that have moved a little.
 *
 * @param marks - where they are now
 * @param before - labels, and the point that the numbers were placed beside
 * @param frame - the plot's scales
 * @returns the labels, moved along [px]
 */
export function carriedLabels(
  { point, system }: LabelledMarks,
  { spots, labels, point: from }: PlacedLabels & Pick<LabelledMarks, 'point'>,
  frame: PlotFrame,
): PlacedLabels {
  const { point: numbers, system: name } = labels;
  const along = spots.system;
  const mark = along && system.length > 0 && strokeStart(system, along.part, frame, SYSTEM_STROKES);
  return {
    spots,
    labels: {
      ...labels,
      point: point && from && numbers && moved(numbers, point.x - from.x, point.y - from.y),
      system: name && along && mark ? boxAt(mark, sizeOf(name), along.spot) : name,
    },
  };
}

/**
 * Finds places for labels. The numbers come first, then the lines' labels, then the trail's; none covers
 * a line, a mark or another label.
 *
 * @param marks - what is labelled
 * @param sizes - of the labels
 * @param last - where they stood before
 * @param ruled - axes and collector's curve
 * @returns the labels; one without a free place is left out [px]
 */
export function placedLabels(
  { point, others, trail, system: knots }: LabelledMarks,
  sizes: LabelSizes,
  last: LabelSpots | undefined,
  ruled: RuledPlot,
): PlacedLabels {
  const { frame } = ruled;
  const systemStrokes = knots.length > 0 ? strokesAlong(knots, frame, SYSTEM_STROKES) : [];
  const boxes: Box[] = [
    ...ruled.collector.points,
    ...ruled.collector.aside,
    ...others,
    ...trail,
  ].map((mark) => boxAround(mark, MARK_ROOM));
  if (point) boxes.push(boxAround(point, POINT_ROOM));
  const obstacles: Obstacles = {
    strokes: [...ruled.collector.strokes.all, ...systemStrokes],
    boxes,
  };
  const page = { ...frame.inner, right: ruled.size.width - 2 };
  const keep = (box: Box | undefined) => {
    if (box) boxes.push(box);
    return box;
  };

  const beside = point && placeLabel(point, sizes.point, page, obstacles, { last: last?.point });
  const numbers = keep(
    beside?.box ?? (point && placeAnywhere(point, sizes.point, page, obstacles)),
  );
  const label = (
    at: readonly number[],
    strokes: readonly Stroke[],
    size: LabelSize,
    before: LineSpot | undefined,
  ) => {
    const placed = placeLineLabel(strokes, at, size, page, obstacles, { last: before });
    keep(placed?.box);
    return placed;
  };
  const collector = label(
    COLLECTOR_LABEL_AT,
    ruled.collector.strokes.known,
    sizes.collector,
    last?.collector,
  );
  const system = label(SYSTEM_LABEL_AT, systemStrokes, sizes.system, last?.system);
  return {
    spots: { point: beside?.spot, collector: collector?.at, system: system?.at },
    labels: {
      point: numbers,
      collector: collector?.box,
      system: system?.box,
      trail: trail.map((place, i) => {
        const size = sizes.trail[i];
        const near = { distances: TRAIL_DISTANCES };
        return size && keep(placeLabel(place, size, page, obstacles, near)?.box);
      }),
    },
  };
}

function moved({ left, top, right, bottom }: Box, x: number, y: number): Box {
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
}

function sizeOf({ left, top, right, bottom }: Box): LabelSize {
  return { width: right - left, height: bottom - top };
}
