// A chart as it may lie on a picture: turned and skewed, each axis evenly spaced or logarithmic. Places
// come from rotating and shearing the paper, not from marks on it.

import type { AxisScale, ChartValue } from '../../src/plot/chart-trace/chart-mapping.ts';

interface DrawnAxis {
  readonly scale: AxisScale;
  readonly from: number;
  readonly to: number;
}

export interface DrawnChart {
  readonly flow: DrawnAxis;
  readonly pressure: DrawnAxis;
  readonly width: number;
  readonly height: number;
  /** Where on the picture a pair of values lies [px]. */
  readonly place: (value: ChartValue) => { readonly x: number; readonly y: number };
}

/** How a chart lies; angles in degrees. */
export interface ChartLie {
  readonly flow: AxisScale;
  readonly pressure: AxisScale;
  readonly turn: number;
  readonly skew: number;
}

const PAPER = { width: 560, height: 380 };
const PICTURE = { width: 900, height: 640 };

/** The part of the way from an axis' beginning to its end. */
function part({ scale, from, to }: DrawnAxis, value: number): number {
  return scale === 'linear'
    ? (value - from) / (to - from)
    : Math.log10(value / from) / Math.log10(to / from);
}

export function drawnChart({ flow, pressure, turn, skew }: ChartLie): DrawnChart {
  const flowAxis = { scale: flow, from: 0.05, to: 0.8 };
  const pressureAxis = { scale: pressure, from: 100, to: 2500 };
  const [angle, shear] = [(turn * Math.PI) / 180, Math.tan((skew * Math.PI) / 180)];
  const place = (value: ChartValue) => {
    const right = (part(flowAxis, value.flow) - 0.5) * PAPER.width;
    const up = (part(pressureAxis, value.pressure) - 0.5) * PAPER.height;
    const [x, y] = [right + shear * up, -up];
    return {
      x: PICTURE.width / 2 + x * Math.cos(angle) - y * Math.sin(angle),
      y: PICTURE.height / 2 + x * Math.sin(angle) + y * Math.cos(angle),
    };
  };
  return { flow: flowAxis, pressure: pressureAxis, ...PICTURE, place };
}
