// The marks of a chart as they stand on its picture, each with its name.

import {
  AXIS_MARKS,
  type MarkName,
  placeOf,
  type TracedChart,
} from '../../plot/chart-trace/traced-chart.ts';
import type { Place } from '../../plot/frame.ts';

/** A mark on the picture. */
export interface ShownMark {
  readonly mark: MarkName;
  readonly place: Place;
  /** Written beside it. */
  readonly name: string;
}

/** All marks that have a place. */
export function shownMarks(chart: TracedChart): readonly ShownMark[] {
  const axes = AXIS_MARKS.flatMap((mark): ShownMark[] => {
    const place = placeOf(chart, mark);
    return place ? [{ mark, place, name: `${mark.axis} ${mark.index + 1}` }] : [];
  });
  const points = chart.points.map((place, index): ShownMark => {
    const mark = { kind: 'point', index } as const;
    return { mark, place, name: String(index + 1) };
  });
  return [...axes, ...points];
}
