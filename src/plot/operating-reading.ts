// Reading the operating-point plot: stops at round flows along both lines, and one at the point.

import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { boxAround } from './frame.ts';
import type { MovingPlot } from './moving-plot.ts';
import { strokesAlong } from './obstacles.ts';
import {
  asking,
  curveRemark,
  DUCTS_LABEL,
  given,
  type OperatingLines,
  roundFlows,
} from './operating-lines.ts';
import type { Readable, ReadLine } from './reading.ts';
import type { RuledPlot } from './ruled-plot.ts';

/** About how many stops a line has. */
const STOPS = 100;
/** Half the side of the square that a mark keeps free of the reading [px]. */
const MARK_ROOM = 8;

/**
 * What can be read off the plot.
 *
 * @param ruled - axes and collector's curve
 * @param moving - labels and marks in the way
 * @param lines - both lines by value
 * @param units - the units to speak in
 * @returns the collector's line, and that of the ducts if there is one
 */
export function operatingReading(
  ruled: RuledPlot,
  moving: MovingPlot,
  lines: OperatingLines,
  units: UnitSystem,
): Readable {
  const { frame } = ruled;
  const { point } = lines;
  const flows = roundFlows(units, frame.flowEnd, STOPS, point);
  const line = (
    name: string,
    suctionAt: (flow: number) => number | undefined,
    remarkAt: (flow: number) => string | undefined,
  ): ReadLine & { readonly flows: readonly number[] } => {
    const stops = flows.flatMap((flow) => {
      const suction = suctionAt(flow);
      return suction === undefined || suction > frame.pressureEnd ? [] : [{ flow, suction }];
    });
    return {
      name,
      flows: stops.map(({ flow }) => flow),
      places: stops.map(({ flow, suction }) => ({ x: frame.x(flow), y: frame.y(suction) })),
      read: (stop) => {
        const { flow, suction } = stops[stop]!;
        return {
          figures: [
            formatQuantity('flow', units, flow).text,
            formatQuantity('pressure', units, suction).text,
          ],
          remark: flow === point?.flow ? joined('here they meet', remarkAt(flow)) : remarkAt(flow),
        };
      },
    };
  };
  const collector = line(
    lines.collector,
    (flow) => given(lines, flow),
    (flow) => curveRemark(lines, flow),
  );
  const ducts = line(DUCTS_LABEL, asking(lines), () => undefined);
  const marks = [moving.point, ...ruled.collector.points, ...moving.others, ...moving.trail];
  const { labels } = moving;
  const boxes = [labels.point, labels.collector, labels.system, ...labels.trail];
  return {
    lines: [collector, ducts].filter(({ places }) => places.length > 0),
    page: { ...frame.inner, top: 2, right: ruled.size.width - 2 },
    obstacles: {
      strokes: [
        ...ruled.collector.strokes.all,
        ...(lines.system.length > 1 ? strokesAlong(lines.system, frame) : []),
      ],
      boxes: [
        ...boxes.filter((box) => box !== undefined),
        ...marks.flatMap((mark) => (mark ? [boxAround(mark, MARK_ROOM)] : [])),
      ],
    },
    start: { line: 0, stop: Math.max(0, point ? collector.flows.indexOf(point.flow) : 0) },
  };
}

function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined).join('; ');
}
