import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import type { CollectorCurve } from '../../src/curve/collector-curve.ts';
import { pchip } from '../../src/math/pchip.ts';
import '../../src/ui/operating-plot/operating-plot.ts';
import { expect, expectAccessible, html, picture, place, text } from './harness.ts';

const curve: CollectorCurve = {
  spline: pchip([0, 0.1, 0.2, 0.3, 0.4, 0.5], [2000, 2060, 2040, 1800, 1300, 500]),
  flowScale: 1,
  pressureScale: 1,
  quadratic: 0,
  linear: 0,
};
const system = Array.from({ length: 20 }, (_, i) => i * 0.03).map((flow) => ({
  flow,
  pressure: 20000 * flow ** 2,
  slope: 40000 * flow,
}));
const point = { flow: 0.3, suction: 1800 };
const placePlot = (parts: { point?: typeof point | undefined; units?: 'us' | 'metric' } = {}) =>
  place(
    html`<div style="height: 400px">
      <dc-operating-plot
        label="Collector and ducts meet at 636 cfm"
        collector="3 hp cyclone"
        instead="nothing open"
        .units=${parts.units ?? 'us'}
        .curve=${curve}
        .system=${parts.point === undefined && 'point' in parts ? [] : system}
        .point=${'point' in parts ? parts.point : point}
        .trail=${[{ flow: 0.42, suction: 1160, name: 'lathe' }]}
      ></dc-operating-plot>
    </div>`,
  );

describe('the operating-point plot', () => {
  it('is accessible', async () => {
    await expectAccessible(await placePlot());
  });

  it('is a picture with its meaning in words', async () => {
    await placePlot();
    expect(picture('Collector and ducts meet at 636 cfm').elements()).toHaveLength(1);
  });

  it('writes both numbers at the point, and a label on each line', async () => {
    await placePlot();
    for (const words of [/^636/, /^7\.23/, /^3 hp cyclone$/, /^ducts, as open now$/, /^lathe$/]) {
      expect(text(words).elements().length, `${words}`).toBeGreaterThanOrEqual(1);
    }
  });

  it('speaks in the chosen units, on the axes too', async () => {
    await placePlot({ units: 'metric' });
    expect(text(/^1\s080/).elements()).toHaveLength(1);
    expect(text('air flow, m³/h').elements()).toHaveLength(1);
  });

  it('says what is the matter where the numbers would stand', async () => {
    await placePlot({ point: undefined });
    expect(text('nothing open').elements()).toHaveLength(1);
    expect(page.getByText('cfm', { exact: true }).elements()).toHaveLength(0);
  });
});
