// Losses of fittings against published values, each with its source in shared/checks-fittings.json.
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks-fittings.json' with { type: 'json' };
import gates from '../../shared/gates.json' with { type: 'json' };
import { areaChange } from '../../src/duct/area-change.ts';
import type { Coefficient } from '../../src/duct/coefficient.ts';
import { colebrook } from '../../src/duct/colebrook.ts';
import { goredElbow } from '../../src/duct/gored-elbow.ts';
import { findHood } from '../../src/duct/hood.ts';
import { mitreBend } from '../../src/duct/mitre-bend.ts';
import { smoothBend } from '../../src/duct/smooth-bend.ts';

type Given = Record<string, number>;

const fittings: Record<string, (given: Given) => Coefficient> = {
  'smooth-bend': (given) => smoothBend(radians(given), need(given, 'radius')),
  'mitre-bend': (given) => mitreBend(radians(given)),
  'gored-elbow': (given) =>
    goredElbow(need(given, 'pieces') as 3 | 4 | 5, need(given, 'radius'), radians(given)),
  taper: (given) =>
    areaChange(need(given, 'fromDiameter'), need(given, 'toDiameter'), {
      kind: 'taper',
      angle: radians(given),
    }),
  sudden: (given) =>
    areaChange(need(given, 'fromDiameter'), need(given, 'toDiameter'), { kind: 'sudden' }),
};

describe('fittings as published', () => {
  it.each(checks.rows)('$fitting $given: $coefficient, from $source', (row) => {
    const fitting = fittings[row.fitting];
    if (fitting === undefined) throw new Error(`no such fitting: ${row.fitting}`);
    expect(inAir(fitting(row.given as Given), row.given as Given)).toBeCloseTo(
      row.coefficient,
      row.decimals,
    );
  });

  it('two 45° bends cost what one long 90° costs, and far less than a mitred 90°', () => {
    // Common practice; the mitres are Rennels and Hudson's 2 × 0.304 against 1.20.
    expect(2 * mitreBend(Math.PI / 4).fixed).toBeCloseTo(0.608, 3);
    expect(mitreBend(Math.PI / 2).fixed).toBeCloseTo(1.2021, 4);
    expect(2 * goredElbow(5, 1.5, Math.PI / 4).fixed).toBeCloseTo(0.24, 12);
  });
});

describe('entry losses (ACGIH, Industrial Ventilation, hood loss coefficients)', () => {
  it.each([
    ['plain-end', 0.93],
    ['flanged-end', 0.49],
    ['bell-mouth', 0.04],
    ['grinder-straight', 0.65],
    ['grinder-tapered', 0.4],
  ])('%s %d', (id, coefficient) => {
    expect(findHood(id)).toMatchObject({ coefficient, source: { status: 'verified' } });
  });
});

describe('gate in a round pipe (Weisbach 1855)', () => {
  // The contraction is given to three digits; K is steep in it where little is open.
  it.each(gates.rows)('open to $travel: K $coefficient', (row) => {
    const jet = row.contraction * row.openArea;
    expect((1 / jet - 1) ** 2 / row.coefficient).toBeCloseTo(1, 2);
  });

  // His blade is as round as the pipe: what it leaves open is a lune.
  it.each(gates.rows)('open to $travel: area $openArea', (row) => {
    const lens = Math.acos(row.travel) - row.travel * Math.sqrt(1 - row.travel ** 2);
    expect(1 - (2 * lens) / Math.PI).toBeCloseTo(row.openArea, 3);
  });
});

function inAir(coefficient: Coefficient, given: Given): number {
  if (coefficient.frictional === 0) return coefficient.fixed;
  const relativeRoughness = need(given, 'roughness') / need(given, 'diameter');
  const factor = colebrook.factor(need(given, 'reynolds'), relativeRoughness);
  return coefficient.fixed + coefficient.frictional * factor;
}

function radians(given: Given): number {
  return (need(given, 'angle') * Math.PI) / 180;
}

function need(given: Given, key: string): number {
  const value = given[key];
  if (value === undefined) throw new Error(`the check does not give ${key}`);
  return value;
}
