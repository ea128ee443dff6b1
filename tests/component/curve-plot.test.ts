// The points of a curve moved in its plot, by the keys, by a pointer and by a finger.
import { afterEach, beforeEach, describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { enteredSpline } from '../../src/curve/entered-spline.ts';
import { exampleCurves } from '../../src/shop/example-curves.ts';
import type { CurvePlot } from '../../src/ui/curve-plot/curve-plot.ts';
import '../../src/ui/curve-plot/curve-plot.ts';
import { drawn, expect, expectAccessible, heard, html, picture, place, slider } from './harness.ts';
import { makeChangesTake } from './slow-processor.ts';

const POINTS = [
  { flow: 0, pressure: 2000 },
  { flow: 0.25, pressure: 1500 },
  { flow: 0.5, pressure: 400 },
];
/** Then the hand counts as resting [ms]. */
const REST = 150;
const entered = (points: readonly (typeof POINTS)[number][]) => ({
  points,
  entered: enteredSpline({ ...exampleCurves()[0]!, points }),
  available: undefined,
  point: { flow: points[1]!.flow, suction: points[1]!.pressure },
});

/** A plot that takes each move, as the editor does. */
async function placePlot() {
  const plot = await place<CurvePlot>(
    html`<dc-curve-plot .curve=${entered(POINTS)} .units=${'metric'}></dc-curve-plot>`,
  );
  const moves = heard(plot, 'dc-point-move');
  plot.addEventListener('dc-point-move', ({ index, point }) => {
    plot.curve = entered((plot.curve?.points ?? []).with(index, point));
  });
  return { plot, moves };
}

function drag(mark: Element, path: readonly (readonly [number, number])[], pointerType: string) {
  const box = mark.getBoundingClientRect();
  const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
  const send = (type: string, dx: number, dy: number) =>
    mark.dispatchEvent(
      new PointerEvent(type, {
        pointerId: 1,
        pointerType,
        clientX: x + dx,
        clientY: y + dy,
        bubbles: true,
        composed: true,
      }),
    );
  // No hand is on the glass, so there is none to capture.
  (mark as HTMLElement).setPointerCapture = () => {};
  send('pointerdown', 0, 0);
  for (const [dx, dy] of path) send('pointermove', dx, dy);
  return { send, end: () => send('pointerup', ...(path.at(-1) ?? [0, 0])) };
}

describe('the plot of a curve', () => {
  it('is accessible, and says how many points it goes through', async () => {
    const { plot } = await placePlot();
    await expectAccessible(plot);
    expect(picture(/through 3 points/).elements()).toHaveLength(1);
  });

  it('moves a point by keys, finely and coarsely, in one run, and back by Escape', async () => {
    const { moves } = await placePlot();
    const mark = slider('Point 2 of the curve').element() as HTMLElement;
    expect(mark.getAttribute('aria-valuetext')).toMatch(/^900.m³\/h, 1.500.Pa$/);
    mark.focus();
    await userEvent.keyboard('{ArrowRight}');
    await drawn();
    const fine = moves.at(-1)!.point.flow - 0.25;
    expect(fine).toBeGreaterThan(0);
    expect(moves.at(-1)!.point.pressure).toBe(1500);
    await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
    await drawn();
    expect(moves.at(-1)!.point.flow - 0.25).toBeCloseTo(11 * fine, 9);
    await userEvent.keyboard('{ArrowDown}');
    await drawn();
    expect(moves.at(-1)!.point.pressure).toBeLessThan(1500);
    expect(new Set(moves.map(({ run }) => run)).size).toBe(1);
    await userEvent.keyboard('{Escape}');
    await drawn();
    expect(moves.at(-1)!.point).toEqual(POINTS[1]);
    await userEvent.keyboard('{ArrowUp}');
    expect(moves.at(-1)!.run).not.toBe(moves[0]!.run);
  });

  it.each(['mouse', 'touch'])('moves a point under the hand: %s', async (pointerType) => {
    const { moves } = await placePlot();
    const mark = slider('Point 2 of the curve').element();
    const { width, height } = mark.getBoundingClientRect();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
    const hand = drag(
      mark,
      [
        [1, 0],
        [10, 5],
        [20, 30],
      ],
      pointerType,
    );
    hand.end();
    await drawn();
    // The first move is no more than a touch.
    expect(moves).toHaveLength(2);
    const { point, index } = moves.at(-1)!;
    expect(index).toBe(1);
    expect(point.flow).toBeGreaterThan(0.25);
    expect(point.pressure).toBeLessThan(1500);
    expect(slider('Point 2 of the curve').element().getAttribute('aria-valuetext')).toContain('Pa');
  });

  it('puts a point back where the page takes the hand away or Escape is pressed', async () => {
    const { moves } = await placePlot();
    const mark = slider('Point 2 of the curve').element() as HTMLElement;
    drag(mark, [[20, 30]], 'touch').send('pointercancel', 20, 30);
    expect(moves.map(({ point }) => point).at(-1)).toEqual(POINTS[1]);
    await drawn();
    mark.focus();
    drag(mark, [[20, 30]], 'mouse');
    await userEvent.keyboard('{Escape}');
    expect(moves.map(({ point }) => point).at(-1)).toEqual(POINTS[1]);
    expect(moves).toHaveLength(4);
  });
});

describe('the plot of a curve in larger text', () => {
  it('fills its box, with each handle on its mark', async () => {
    document.documentElement.style.fontSize = '200%';
    try {
      const { plot } = await placePlot();
      await drawn();
      const box = plot.getBoundingClientRect();
      const shown = plot.picture!.getBoundingClientRect();
      expect(shown.width).toBeCloseTo(box.width, 0);
      expect(shown.height).toBeCloseTo(box.height, 0);
      const middle = (element: Element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        return { x: (left + right) / 2, y: (top + bottom) / 2 };
      };
      const marks = [...plot.picture!.querySelectorAll('.mark')].map(middle);
      const handles = [...plot.renderRoot.querySelectorAll('.handle')].map(middle);
      expect(marks).toHaveLength(POINTS.length);
      marks.forEach(({ x, y }, i) => {
        expect(Math.hypot(x - handles[i]!.x, y - handles[i]!.y)).toBeLessThan(1);
      });
    } finally {
      document.documentElement.style.fontSize = '';
    }
  });
});

describe('the plot of a curve on a slow processor', () => {
  beforeEach(() => makeChangesTake(2));
  afterEach(() => makeChangesTake(0));
  const pressure = () => Number(mark().getAttribute('aria-valuenow'));
  const mark = () => slider('Point 2 of the curve').element();

  it('answers every key at once', async () => {
    await placePlot();
    (mark() as HTMLElement).focus();
    const read = [pressure()];
    for (let press = 0; press < 3; press++) {
      await userEvent.keyboard('{ArrowDown}');
      await drawn();
      read.push(pressure());
    }
    expect(new Set(read).size).toBe(4);
  });

  it('skips changes of a drag, but not the last one', async () => {
    const { moves } = await placePlot();
    const { send, end } = drag(mark(), [], 'mouse');
    let drawings = 0;
    for (let down = 10; down <= 60; down += 10) {
      const before = pressure();
      send('pointermove', 0, down);
      await drawn();
      if (pressure() !== before) drawings += 1;
    }
    expect(drawings).toBeLessThan(6);
    await expect.poll(pressure).toBe(Math.round(moves.at(-1)!.point.pressure * 1000) / 1000);
    end();
  });

  it('is moved at every third move of the hand, and drawn a frame after', async () => {
    const { plot, moves } = await placePlot();
    const placeOf = (kind: string) =>
      plot.renderRoot.querySelector(`circle.${kind}`)?.getAttribute('transform');
    const { send, end } = drag(mark(), [], 'mouse');
    const steps: string[] = [];
    for (let down = 10; down <= 90; down += 10) {
      const [held, count] = [placeOf('held'), moves.length];
      send('pointermove', 0, down);
      await drawn();
      const [isMade, isDrawn] = [moves.length > count, placeOf('held') !== held];
      steps.push(isMade ? (isDrawn ? 'both' : 'made') : isDrawn ? 'drawn' : 'neither');
      if (isDrawn) expect(placeOf('point')).toBe(placeOf('held'));
    }
    // At first both, and again wherever the moves of this test came to rest.
    expect(steps[0]).toBe('both');
    expect(steps.join(' ')).toContain('made drawn neither');
    end();
  });

  it('is where the hand let go, and where it was before Escape', async () => {
    const { plot, moves } = await placePlot();
    const { send } = drag(mark(), [[0, 10]], 'mouse');
    send('pointermove', 0, 40);
    expect(moves).toHaveLength(1);
    send('pointerup', 0, 40);
    expect(moves).toHaveLength(2);
    const [first, last] = moves.map(({ point }) => point.pressure);
    expect(1500 - last!).toBeGreaterThan(3 * (1500 - first!));
    await drawn();
    expect(pressure()).toBeCloseTo(last!, 2);

    (mark() as HTMLElement).focus();
    drag(
      mark(),
      [
        [0, 10],
        [0, 40],
      ],
      'mouse',
    );
    await userEvent.keyboard('{Escape}');
    // A move that was put off would be made by now.
    await new Promise((resolve) => setTimeout(resolve, 2 * REST));
    expect(pressure()).toBeCloseTo(last!, 2);
    expect(plot.curve!.points[1]!.pressure).toBe(last);
  });
});
