// The search for added lengths against a sweep at 1 mm, on half of 200 random shops; the other half is
// in the file beside, so that two processors share them.
//
// SHOPS=200 npx vitest run --project core tests/unit/study/length-crossings
import { describe, expect, it } from 'vitest';
import { sweptShops } from '../../setup/length-sweep.ts';
import { say } from '../../setup/say.ts';

const SHOPS = Number(process.env['SHOPS'] ?? 200);
/** On a busy machine [ms]. */
const PATIENCE = 600_000;

describe('lengths on the first half of the shops', () => {
  it(
    'are those of the sweep, every one of them',
    () => {
      const { faults, passages, leaps, rises, turning } = sweptShops(1, 1 + SHOPS / 2);
      say(
        `added lengths: ${SHOPS / 2} shops, ${passages} limits, ${faults.length} at fault ` +
          `(${leaps} leaps, ${rises} rising, ${turning} passed more than once)`,
      );
      expect(faults).toEqual([]);
      expect(passages).toBeGreaterThan((5 * SHOPS) / 2);
      expect(Math.min(leaps, rises, turning)).toBeGreaterThan(0);
    },
    PATIENCE,
  );
});
