// Converging wyes against values worked out from the published equations, outside this program.
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks-wye.json' with { type: 'json' };
import fittings from '../../shared/fittings.json' with { type: 'json' };
import { momentumWyeK } from '../../src/duct/wye.ts';

const area = (diameter: number) => (Math.PI / 4) * diameter ** 2;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

function wye(place: {
  branch: number;
  straight: number;
  combined: number;
  angle: number;
  share: number;
}) {
  const [run, branch] = momentumWyeK(
    [
      { flow: 1 - place.share, area: area(place.straight), angle: 0 },
      { flow: place.share, area: area(place.branch), angle: radians(place.angle) },
    ],
    area(place.combined),
  );
  return { run, branch };
}

describe('momentum wye', () => {
  it.each(checks.rows)('$name', (row) => {
    const { run, branch } = wye(row);
    expect(branch).toBeCloseTo(row.branchCoefficient, row.decimals);
    if (row.runCoefficient !== null) expect(run).toBeCloseTo(row.runCoefficient, row.decimals);
  });
});

describe('run of a constant main (Idelchik ch. 7; Crane TP-410, example 7-35)', () => {
  it.each(checks.runs)('branch $branch m at $angle°, share $share', (row) => {
    const { run } = wye({ ...row, straight: row.combined });
    // In a constant main the run's own velocity pressure takes back half of its momentum term.
    expect(run).toBeCloseTo(row.runCoefficient, row.decimals);
  });
});

describe('the fixed branch factor of shop practice (worksheets after ACGIH)', () => {
  it.each([
    [30, 0.18],
    [45, 0.28],
  ])('%d° %d on the velocity pressure of the branch', (angle, coefficient) => {
    const row = fittings.rows.find((each) => each.kind === 'branch' && each.angle === angle);
    expect(row).toMatchObject({ coefficient, on: 'own', status: 'verified' });
  });
});
