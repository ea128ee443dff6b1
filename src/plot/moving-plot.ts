// The part of the operating-point plot that moves with the gates: the system curve, the operating
// point with its numbers, other crossings, and the trail of states already tried.

import { bezierPath, type Knot } from './bezier-path.ts';
import type { Box, Place, PlotFrame } from './frame.ts';
import { type Obstacles, type Stroke, strokesAlong, strokeStart } from './obstacles.ts';
import { boxAt, type LabelSize, type LabelSpot, placeAnywhere, placeLabel } from './place-label.ts';
import { type LineSpot, placeLineLabel } from './place-line-label.ts';
import type { RuledPlot } from './ruled-plot.ts';

/** A flow with the suction there. */
export interface FlowPoint {
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** Total suction there [Pa] */
  readonly suction: number;
}

/** What is to be drawn, and how large the labels are. */
export interface MovingParts {
  /** The system curve by rising flow; fewer than two knots draw nothing. */
  readonly system: readonly Knot[];
  readonly point: FlowPoint | undefined;
  /** Where the curves cross besides. */
  readonly others: readonly FlowPoint[];
  readonly trail: readonly FlowPoint[];
  readonly labels: {
    readonly point: LabelSize;
    readonly collector: LabelSize;
    readonly system: LabelSize;
    readonly trail: readonly LabelSize[];
  };
  /** Where labels stood before. */
  readonly last?: LabelSpots | undefined;
  /** A plot whose labels are carried along with their marks: no better place is looked for. */
  readonly carried?: MovingPlot | undefined;
}

/** Where labels stand as seen from what they name. */
export interface LabelSpots {
  readonly point: LabelSpot | undefined;
  readonly collector: LineSpot | undefined;
  readonly system: LineSpot | undefined;
}

/** Places and paths, ready to draw [px]. A label without a free place is left out. */
export interface MovingPlot {
  readonly system: string;
  readonly point: Place | undefined;
  readonly others: readonly Place[];
  readonly trail: readonly Place[];
  readonly spots: LabelSpots;
  readonly labels: LabelBoxes;
}

/** Where labels stand [px]. */
export interface LabelBoxes {
  readonly point: Box | undefined;
  readonly collector: Box | undefined;
  readonly system: Box | undefined;
  readonly trail: readonly (Box | undefined)[];
}

interface Marks extends Pick<MovingPlot, 'point' | 'others' | 'trail'> {
  /** The part of the system curve that is in view. */
  readonly system: readonly Knot[];
}

/** A name further from its mark would be taken for another's [px]. */
const TRAIL_DISTANCES = [10, 14, 20];
/** Half the side of the square that a mark keeps free of labels [px]. */
const POINT_ROOM = 11;
const MARK_ROOM = 6;
/** The knots of the system curve are close together [strokes a piece]. */
const SYSTEM_STROKES = 5;
/** Where a line's label is tried first, as parts of the way along it [-]. */
const COLLECTOR_LABEL_AT = [0.12, 0.2, 0.3, 0.05, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
const SYSTEM_LABEL_AT = [0.95, 0.88, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3];

/**
 * Draws what moves. The numbers find their place first, then the lines' labels, then the trail's;
 * none covers a line, a mark or another label.
 *
 * @param ruled - axes and collector's curve
 * @param parts - what is to be drawn
 * @returns paths, marks and labels [px]
 */
export function movingPlot(ruled: RuledPlot, parts: MovingParts): MovingPlot {
  const { frame } = ruled;
  const system = clipped(parts.system, frame);
  const marks: Marks = {
    system: system.length > 1 ? system : [],
    point: parts.point && placeOf(parts.point, frame),
    others: parts.others.map((other) => placeOf(other, frame)),
    trail: parts.trail.map((tried) => placeOf(tried, frame)),
  };
  const placed = parts.carried
    ? carriedLabels(marks, parts.carried, frame)
    : placedLabels(marks, parts, ruled);
  return {
    ...marks,
    system: marks.system.length > 0 ? bezierPath(marks.system, frame) : '',
    ...placed,
  };
}

/** Labels where they stood, seen from marks that have moved a little. */
function carriedLabels(
  { point, system }: Marks,
  { spots, labels, ...before }: MovingPlot,
  frame: PlotFrame,
): Pick<MovingPlot, 'spots' | 'labels'> {
  const { point: numbers, system: name } = labels;
  const from = before.point;
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

function placedLabels(
  { point, others, trail, system: knots }: Marks,
  parts: MovingParts,
  ruled: RuledPlot,
): Pick<MovingPlot, 'spots' | 'labels'> {
  const { frame } = ruled;
  const systemStrokes = knots.length > 0 ? strokesAlong(knots, frame, SYSTEM_STROKES) : [];
  const boxes: Box[] = [...ruled.collector.points, ...others, ...trail].map((mark) =>
    around(mark, MARK_ROOM),
  );
  if (point) boxes.push(around(point, POINT_ROOM));
  const obstacles: Obstacles = {
    strokes: [...ruled.collector.strokes.all, ...systemStrokes],
    boxes,
  };
  const page = { ...frame.inner, right: ruled.size.width - 2 };
  const keep = (box: Box | undefined) => {
    if (box) boxes.push(box);
    return box;
  };

  const beside =
    point && placeLabel(point, parts.labels.point, page, obstacles, { last: parts.last?.point });
  const numbers = keep(
    beside?.box ?? (point && placeAnywhere(point, parts.labels.point, page, obstacles)),
  );
  const label = (
    at: readonly number[],
    strokes: readonly Stroke[],
    size: LabelSize,
    last: LineSpot | undefined,
  ) => {
    const placed = placeLineLabel(strokes, at, size, page, obstacles, { last });
    keep(placed?.box);
    return placed;
  };
  const collector = label(
    COLLECTOR_LABEL_AT,
    ruled.collector.strokes.known,
    parts.labels.collector,
    parts.last?.collector,
  );
  const system = label(SYSTEM_LABEL_AT, systemStrokes, parts.labels.system, parts.last?.system);
  return {
    spots: { point: beside?.spot, collector: collector?.at, system: system?.at },
    labels: {
      point: numbers,
      collector: collector?.box,
      system: system?.box,
      trail: trail.map((place, i) => {
        const size = parts.labels.trail[i];
        const near = { distances: TRAIL_DISTANCES };
        return size && keep(placeLabel(place, size, page, obstacles, near)?.box);
      }),
    },
  };
}

/** Knots up to the first one that lies above the frame or right of it. */
function clipped(system: readonly Knot[], frame: PlotFrame): readonly Knot[] {
  const beyond = system.findIndex(
    ({ flow, pressure }) => pressure > frame.pressureEnd || flow > frame.flowEnd,
  );
  return beyond < 0 ? system : system.slice(0, beyond + 1);
}

function placeOf({ flow, suction }: FlowPoint, frame: PlotFrame): Place {
  return { x: frame.x(flow), y: frame.y(suction) };
}

function moved({ left, top, right, bottom }: Box, x: number, y: number): Box {
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
}

function sizeOf({ left, top, right, bottom }: Box): LabelSize {
  return { width: right - left, height: bottom - top };
}

function around({ x, y }: Place, room: number): Box {
  return { left: x - room, top: y - room, right: x + room, bottom: y + room };
}
