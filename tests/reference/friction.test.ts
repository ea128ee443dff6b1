// The friction factor against the root of Colebrook and White's equation.
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks-friction.json' with { type: 'json' };
import { colebrook } from '../../src/duct/colebrook.ts';

describe('Colebrook–White (Colebrook 1939), to rounding', () => {
  it.each(checks.rows)('Re $reynolds, ε/D $relativeRoughness', (row) => {
    const factor = colebrook.factor(row.reynolds, row.relativeRoughness);
    expect(Math.abs(factor / row.factor - 1)).toBeLessThanOrEqual(checks.tolerance.relative);
  });
});
