// What the page must never show: numbers on a line, or axes that shift while a gate moves.
import { describe, expect, it } from 'vitest';
import { availableSuction } from '../../../src/curve/collector-curve.ts';
import type { Box } from '../../../src/plot/frame.ts';
import { type MovingParts, movingPlot } from '../../../src/plot/moving-plot.ts';
import { isFree, strokesAlong } from '../../../src/plot/obstacles.ts';
import { ruledPlot } from '../../../src/plot/ruled-plot.ts';
import { sampleCurve } from './sample-curve.ts';

/** Ducts that ask for `resistance`·flow², met by the collector at their crossing. */
function parts(resistance: number): MovingParts {
  let low = 0;
  let high = 0.7;
  for (let i = 0; i < 60; i++) {
    const flow = (low + high) / 2;
    if (availableSuction(sampleCurve, flow) > resistance * flow ** 2) low = flow;
    else high = flow;
  }
  const flows = Array.from({ length: 24 }, (_, i) => (i / 23) * 0.65);
  return {
    system: flows.map((flow) => ({
      flow,
      pressure: resistance * flow ** 2,
      slope: 2 * resistance * flow,
    })),
    point: { flow: low, suction: resistance * low ** 2 },
    others: [],
    trail: [{ flow: 0.3, suction: availableSuction(sampleCurve, 0.3) }],
    labels: () => ({
      point: { width: 112, height: 50 },
      collector: { width: 160, height: 16 },
      system: { width: 130, height: 16 },
      trail: [{ width: 90, height: 14 }],
    }),
  };
}

const sizes = [
  { width: 520, height: 400 },
  { width: 772, height: 380 },
  { width: 358, height: 200 },
];
const resistances = Array.from({ length: 40 }, (_, i) => 800 * 1.25 ** i);

describe.each(sizes)('the plot at $width by $height', (size) => {
  const ruled = ruledPlot(sampleCurve, 'us', size);

  it('writes the numbers at the point for any ducts, clear of lines, marks and other labels', () => {
    for (const resistance of resistances) {
      const moving = movingPlot(ruled, parts(resistance));
      const { point, collector, system, trail } = moving.labels;
      const boxes = [point, collector, system, ...trail].filter((box) => box !== undefined);
      expect(point).toBeDefined();
      const inView = parts(resistance).system.filter(
        ({ pressure }) => pressure < ruled.frame.pressureEnd,
      );
      const strokes = [...ruled.collector.strokes.all, ...strokesAlong(inView, ruled.frame)];
      for (const box of boxes) {
        const others = boxes.filter((other: Box) => other !== box);
        expect(isFree(box, { strokes, boxes: others })).toBe(true);
      }
    }
  });

  it('puts the point on both curves', () => {
    const { point } = movingPlot(ruled, parts(9000));
    const flow = parts(9000).point?.flow ?? 0;
    expect(point?.x).toBeCloseTo(ruled.frame.x(flow), 9);
    expect(point?.y).toBeCloseTo(ruled.frame.y(availableSuction(sampleCurve, flow)), 6);
  });
});

describe('labels that are carried along', () => {
  const ruled = ruledPlot(sampleCurve, 'us', sizes[0]!);
  const before = movingPlot(ruled, parts(9000));
  const after = movingPlot(ruled, { ...parts(9020), carried: before });

  it('keep their size and their place as seen from the point', () => {
    const corner = ({ point, labels }: typeof before) => ({
      x: labels.point!.left - point!.x,
      y: labels.point!.top - point!.y,
    });
    expect(after.point).not.toEqual(before.point);
    expect(corner(after).x).toBeCloseTo(corner(before).x, 9);
    expect(corner(after).y).toBeCloseTo(corner(before).y, 9);
  });

  it('stand beside their line where a fresh search would leave them', () => {
    const anew = movingPlot(ruled, { ...parts(9020), last: before.spots });
    expect(anew.spots).toEqual(before.spots);
    const { system } = anew.labels;
    for (const side of ['left', 'top', 'right', 'bottom'] as const) {
      expect(after.labels.system![side]).toBeCloseTo(system![side], 9);
    }
    expect(after.labels.collector).toEqual(anew.labels.collector);
    expect(after.labels.trail).toEqual(before.labels.trail);
  });

  it('are none where the ducts have no curve in view and nothing balances', () => {
    const none = movingPlot(ruled, {
      ...parts(9020),
      system: [],
      point: undefined,
      carried: before,
    });
    expect(none.labels.point).toBeUndefined();
    expect(none.system).toBe('');
  });
});

describe('the moving part', () => {
  it('draws no system curve and no numbers where nothing balances', () => {
    const ruled = ruledPlot(sampleCurve, 'metric', sizes[0]!);
    const moving = movingPlot(ruled, { ...parts(9000), system: [], point: undefined });
    expect(moving.system).toBe('');
    expect(moving.point).toBeUndefined();
    expect(moving.labels.point).toBeUndefined();
  });

  it('keeps the numbers on the side where they were while a gate moves a little', () => {
    const ruled = ruledPlot(sampleCurve, 'us', sizes[0]!);
    const before = movingPlot(ruled, parts(9000));
    const after = movingPlot(ruled, { ...parts(9100), last: before.spots });
    expect(after.spots.point).toEqual(before.spots.point);
  });
});

describe('a ruled plot', () => {
  it('refuses a drawing without room', () => {
    expect(() => ruledPlot(sampleCurve, 'us', { width: 100, height: 400 })).toThrow(RangeError);
  });
});
