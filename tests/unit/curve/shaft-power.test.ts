import { describe, expect, it } from 'vitest';
import { shaftPower } from '../../../src/curve/shaft-power.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

const power = [
  { flow: 0, power: 400 },
  { flow: 0.4, power: 1200 },
];

describe('shaft power from power points', () => {
  const spec = exampleSpec({}, { power, nameplate: 1000 });

  it('lies on the line through the points, with its load on the nameplate', () => {
    expect(shaftPower(spec, chartAir, 0.1)).toEqual({
      kind: 'known',
      power: 600,
      withinPoints: true,
      load: 0.6,
    });
    expect(shaftPower(spec, chartAir, 0.4)).toMatchObject({ load: 1.2 });
  });

  it('says where it had to go past the points', () => {
    expect(shaftPower(spec, chartAir, 0.5)).toMatchObject({ power: 1400, withinPoints: false });
  });

  it('never falls below zero', () => {
    const falling = exampleSpec(
      {},
      { power: [...power].map((p) => ({ ...p, power: 400 - 1e3 * p.flow })) },
    );
    expect(shaftPower(falling, chartAir, 0.6)).toMatchObject({ power: 0 });
  });

  it('goes with the cube of the speed and with density, at a flow that goes with speed', () => {
    const slow = { ...spec, speedRatio: 0.5 };
    const thin = { ...chartAir, density: 0.6 };
    expect(shaftPower(slow, thin, 0.05)).toMatchObject({ power: 600 / 8 / 2, withinPoints: true });
  });
});

describe('shaft power from an efficiency', () => {
  const spec = exampleSpec({}, { efficiency: 0.4 });

  it('is air power over efficiency, with no load where there is no nameplate', () => {
    expect(shaftPower(spec, chartAir, 0.3)).toEqual({
      kind: 'known',
      power: (0.3 * 1800) / 0.4,
      withinPoints: true,
    });
  });

  it('counts total suction, not what a tap shows', () => {
    // A bore of 0.02 m²: 135 Pa of velocity pressure at 0.3 m³/s.
    const read = exampleSpec(
      {},
      { efficiency: 0.4, basis: { kind: 'tap', diameter: 0.15957691216057307 } },
    );
    const result = shaftPower(read, chartAir, 0.3);
    expect(result.kind === 'known' && result.power).toBeCloseTo((0.3 * 1665) / 0.4, 8);
  });

  it('counts what the fan makes, whatever filter comes after it', () => {
    const filtered = { ...spec, filter: { kind: 'resistance', resistance: 2000 } as const };
    expect(shaftPower(filtered, chartAir, 0.3)).toEqual(shaftPower(spec, chartAir, 0.3));
  });

  it('gives way to power points', () => {
    const both = exampleSpec({}, { efficiency: 0.4, power });
    expect(shaftPower(both, chartAir, 0.1)).toMatchObject({ power: 600 });
  });

  it('means nothing where the fan makes no pressure', () => {
    expect(shaftPower(spec, chartAir, 0.6)).toEqual({
      kind: 'unknown',
      reason: 'no pressure at this flow',
    });
  });
});

describe('shaft power', () => {
  it('is unknown where nothing was entered', () => {
    expect(shaftPower(exampleSpec(), chartAir, 0.2)).toEqual({
      kind: 'unknown',
      reason: 'not entered',
    });
  });

  it.each([Number.NaN, -0.1])('is refused at a flow of %f', (flow) => {
    expect(() => shaftPower(exampleSpec({}, { power }), chartAir, flow)).toThrow(String(flow));
  });

  it('is refused for an efficiency of zero', () => {
    const spec = exampleSpec({}, { efficiency: 0 });
    expect(() => shaftPower(spec, chartAir, 0.2)).toThrow(RangeError);
  });
});
