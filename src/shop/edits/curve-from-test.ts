// A curve whose points are those of a test of one's own.

import { reduceTest } from '../../curve/throttle-test/test-points.ts';
import { testDensity } from '../../curve/throttle-test/test-density.ts';
import type { Curve } from '../schema/curve-schema.ts';
import type { TestSheet } from '../schema/test-schema.ts';

/**
 * The curve with the points of a test, as total suction in the air of the test. The former points go;
 * the sheet goes along, so that no reading is lost. Where a flow was met twice the line is smoothed,
 * since no line passes through both; else it stays as it was.
 *
 * @param curve - the curve before
 * @param test - the sheet
 * @returns the curve; undefined where the test gives fewer than two different flows
 */
export function curveFromTest(curve: Curve, test: TestSheet): Curve | undefined {
  const { points } = reduceTest(test);
  const flows = new Set(points.map(({ flow }) => flow));
  if (flows.size < 2) return undefined;
  const isRepeated = flows.size < points.length;
  return {
    ...curve,
    basis: { kind: 'total' },
    density: testDensity(test.air),
    points,
    test,
    ...(isRepeated && curve.fit?.kind !== 'smooth' ? { fit: { kind: 'smooth' } as const } : {}),
  };
}
