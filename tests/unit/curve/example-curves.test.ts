// The example curves in curves/ are invented. They must still be machines that could exist.
// The ranges below are common practice for small centrifugal blowers, no source; each says why.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import { enteredRange } from '../../../src/curve/entered-range.ts';
import { TEST_VISCOSITY } from '../../../src/curve/filter-resistance.ts';
import { freeFlow } from '../../../src/curve/free-flow.ts';
import { peakFlow } from '../../../src/curve/peak-flow.ts';
import { shaftPower } from '../../../src/curve/shaft-power.ts';
import { openCurve } from '../../../src/shop/open-curve.ts';
import type { Curve } from '../../../src/shop/schema/curve-schema.ts';

const folder = join(import.meta.dirname, '../../../curves');
const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
const textOf = (file: string) => readFileSync(join(folder, file), 'utf8');

/** The collector as on its own chart, with nothing more taken off. */
function asTested(curve: Curve) {
  const air = { density: curve.density, viscosity: TEST_VISCOSITY, pressure: 101325 };
  const spec = { curve, filter: { kind: 'none' }, separator: { kind: 'none' } } as const;
  const collector = collectorCurve(spec, air);
  const range = enteredRange(collector);
  const steps = Array.from({ length: 101 }, (_, i) => (range.high * i) / 100);
  return { air, spec, collector, range, steps };
}

/** Speed of the rim of the wheel [m/s]. */
const tipSpeed = (curve: Curve) => (Math.PI * curve.wheelDiameter! * curve.speed!) / 60;

it('there are at least six', () => {
  expect(files.length).toBeGreaterThanOrEqual(6);
});

describe.each(files)('%s', (file) => {
  const opened = openCurve(textOf(file));
  if (opened.kind === 'refused') {
    it('opens', () => expect(opened.problems).toEqual([]));
    return;
  }
  const { curve } = opened;
  const { air, spec, collector, range, steps } = asTested(curve);

  it('is named by its file and says that it is invented, with which filter', () => {
    expect(`${curve.id}.json`).toBe(file);
    expect(curve.note).toMatch(/^Invented/);
    expect(curve.note).toMatch(/filter, also invented: .* m²\W.* when clean/);
  });

  it('holds everything that an example should show', () => {
    expect(curve.power?.length).toBeGreaterThanOrEqual(4);
    expect(curve.points.length).toBeGreaterThanOrEqual(6);
    expect([curve.speed, curve.wheelDiameter, curve.nameplate, curve.price]).not.toContain(
      undefined,
    );
  });

  it('is made of round numbers, in the units of the trade', () => {
    const american = curve.price?.currency === 'USD';
    const flowStep = american ? 50 * 4.719474432e-4 : 50 / 3600;
    const pressureStep = american ? 0.05 * 249.08891 : 10;
    // Six significant digits are good to 5e-6 of the number.
    const isRound = (value: number, step: number) =>
      Math.abs(value - Math.round(value / step) * step) <= 5e-6 * Math.abs(value);
    for (const { flow, pressure } of curve.points) {
      expect([flow, isRound(flow, flowStep)]).toEqual([flow, true]);
      expect([pressure, isRound(pressure, pressureStep)]).toEqual([pressure, true]);
    }
  });

  it('makes at shut-off what its rim speed can make', () => {
    // Ideal wheels give ρu²; blocked, small ones give a good half of it, 0.95 to 1.3 times ½ρu².
    const dynamic = 0.5 * curve.density * tipSpeed(curve) ** 2;
    const ratio = availableSuction(collector, 0) / dynamic;
    expect(ratio).toBeGreaterThan(0.95);
    expect(ratio).toBeLessThan(1.3);
  });

  it('moves at free flow what a wheel of its size can move', () => {
    // Flow over rim speed times disc area: 0.08 to 0.2, and to 0.35 for forward-curved blades.
    const disc = (Math.PI / 4) * curve.wheelDiameter! ** 2;
    const ratio = freeFlow(collector) / (tipSpeed(curve) * disc);
    expect(ratio).toBeGreaterThan(0.08);
    expect(ratio).toBeLessThan(curve.name.includes('forward-curved') ? 0.35 : 0.2);
  });

  it('is known from no flow to close on free flow', () => {
    expect(range.low).toBe(0);
    expect(freeFlow(collector)).toBeGreaterThan(range.high);
    expect(freeFlow(collector)).toBeLessThan(1.35 * range.high);
  });

  it('falls all the way, unless its name says that it has a hump', () => {
    const humped = curve.name.includes('hump');
    expect(peakFlow(collector) > 0).toBe(humped);
  });

  it('gives back less than its motor puts in: at best 35 to 60 %, never 70 %', () => {
    const efficiencies = steps.map((flow) => {
      const shaft = shaftPower(spec, air, flow);
      const power = shaft.kind === 'known' ? shaft.power : Number.NaN;
      return (flow * availableSuction(collector, flow)) / power;
    });
    const best = Math.max(...efficiencies);
    expect(best).toBeGreaterThan(0.35);
    expect(best).toBeLessThan(0.6);
  });

  it('draws more power the more it moves, and uses its motor', () => {
    const loads = steps.map((flow) => {
      const shaft = shaftPower(spec, air, flow);
      return shaft.kind === 'known' ? shaft.load! : Number.NaN;
    });
    loads.slice(1).forEach((load, i) => {
      expect(load).toBeGreaterThan(loads[i]!);
    });
    // A motor is chosen for the work: at least four fifths used, and not a quarter overloaded.
    expect(loads.at(-1)).toBeGreaterThan(0.8);
    expect(loads.at(-1)).toBeLessThan(1.25);
  });
});

it('they span together what a small shop meets', () => {
  const nameplates = files.map((file) => JSON.parse(textOf(file)).nameplate);
  expect(Math.min(...nameplates)).toBeLessThan(800);
  expect(Math.max(...nameplates)).toBeGreaterThan(3500);
  const kinds = new Set(files.map((file) => JSON.parse(textOf(file)).basis.kind));
  expect(kinds).toEqual(new Set(['fan-static', 'tap', 'total']));
});
