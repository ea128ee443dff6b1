// The part of the operating-point plot that moves with the gates: the system curve, the operating
// point with its numbers, other crossings, and the trail of states already tried.

import { bezierPath, type Knot } from './bezier-path.ts';
import type { Place, PlotFrame } from './frame.ts';
import {
  carriedLabels,
  type LabelledMarks,
  type LabelSizes,
  type LabelSpots,
  type PlacedLabels,
  placedLabels,
} from './moving-labels.ts';
import type { RuledPlot } from './ruled-plot.ts';

/** A flow with the suction there. */
export interface FlowPoint {
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** Total suction there [Pa] */
  readonly suction: number;
}

/** What is to be drawn. */
export interface MovingParts {
  /** The system curve by rising flow; fewer than two knots draw nothing. */
  readonly system: readonly Knot[];
  readonly point: FlowPoint | undefined;
  /** Where the curves cross besides. */
  readonly others: readonly FlowPoint[];
  readonly trail: readonly FlowPoint[];
  /** How large the labels are; asked only where they are placed anew. */
  readonly labels: () => LabelSizes;
  /** Where labels stood before. */
  readonly last?: LabelSpots | undefined;
  /** A plot whose labels are carried along with their marks: no better place is looked for. */
  readonly carried?: MovingPlot | undefined;
}

/** Places and paths, ready to draw [px]. A label without a free place is left out. */
export interface MovingPlot extends PlacedLabels {
  readonly system: string;
  readonly point: Place | undefined;
  readonly others: readonly Place[];
  readonly trail: readonly Place[];
}

/**
 * Draws what moves.
 *
 * @param ruled - axes and collector's curve
 * @param parts - what is to be drawn
 * @returns paths, marks and labels [px]
 */
export function movingPlot(ruled: RuledPlot, parts: MovingParts): MovingPlot {
  const { frame } = ruled;
  const system = clipped(parts.system, frame);
  const marks: LabelledMarks = {
    system: system.length > 1 ? system : [],
    point: parts.point && placeOf(parts.point, frame),
    others: parts.others.map((other) => placeOf(other, frame)),
    trail: parts.trail.map((tried) => placeOf(tried, frame)),
  };
  const placed = parts.carried
    ? carriedLabels(marks, parts.carried, frame)
    : placedLabels(marks, parts.labels(), parts.last, ruled);
  return {
    ...marks,
    system: marks.system.length > 0 ? bezierPath(marks.system, frame) : '',
    ...placed,
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
