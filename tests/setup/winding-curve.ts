// A collector's curve that winds about the system curve of a duct tree, so that the two meet more
// than once. No sound fan does this as often; a search for crossings has to stand it all the same.

import type { CollectorCurve } from '../../src/curve/collector-curve.ts';
import { pchip } from '../../src/math/pchip.ts';
import type { Random } from './random-tree.ts';

/**
 * Points above and below the system curve at random, from 1 to 50 % off; the last stretch falls. Two
 * neighbours that both lie a little below may meet it between them too, since it sags there.
 */
export function windingCurve(
  random: Random,
  suctionAt: (flow: number) => number,
  reach: number,
): CollectorCurve {
  const count = 4 + Math.floor(random() * 9);
  const flows = Array.from({ length: count }, (_, i) => (reach * i) / (count - 1));
  const highest = suctionAt(reach);
  const pressures = flows.map((flow, i) => {
    if (i === 0) return highest * 0.5 * random();
    const side = random() < 0.5 ? 1 : -1;
    return suctionAt(flow) * (1 + side * 0.01 * 50 ** random());
  });
  pressures[count - 1] = pressures[count - 2]! * random();
  const flowScale = 0.8 + 0.4 * random();
  const pressureScale = 0.8 + 0.4 * random();
  const quadratic = random() < 0.5 ? 0 : 0.3 * random() * (highest / reach ** 2);
  const linear = random() < 0.5 ? 0 : 0.3 * (random() - 0.3) * (highest / reach);
  const entered = pressures.map(
    (pressure, i) => (pressure + (quadratic * flows[i]! + linear) * flows[i]!) / pressureScale,
  );
  const spline = pchip(
    flows.map((flow) => flow / flowScale),
    entered,
  );
  return { spline, flowScale, pressureScale, quadratic, linear };
}
