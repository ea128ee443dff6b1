// The spline against an independent library: SciPy's PchipInterpolator. The figures, their source
// and the agreement to expect stand in shared/checks-pchip.json.

import { describe, expect, it } from 'vitest';
import table from '../../shared/checks-pchip.json' with { type: 'json' };
import { slopeAt, valueAt } from '../../src/math/hermite.ts';
import { pchip } from '../../src/math/pchip.ts';

const largest = (numbers: readonly number[]) => Math.max(...numbers.map(Math.abs));

describe.each(table.rows)('$name ($source)', (row) => {
  const spline = pchip(row.x, row.y);

  it('has the slopes of the library at its knots', () => {
    const allowed = table.agreement.relative * largest(row.slopes);
    row.slopes.forEach((slope, i) => {
      expect(Math.abs(slopeAt(spline, row.x[i]!) - slope)).toBeLessThanOrEqual(allowed);
    });
  });

  it('has the values of the library between them', () => {
    const allowed = table.agreement.relative * largest(row.y);
    for (const { x, y } of row.at) {
      expect(Math.abs(valueAt(spline, x) - y)).toBeLessThanOrEqual(allowed);
    }
  });
});
