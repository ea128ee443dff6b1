import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaChange, type Transition, USUAL_TAPER } from '../../../src/duct/area-change.ts';

const diameter = fc.double({ min: 0.05, max: 0.3, noNaN: true });
const angle = fc.double({ min: 0, max: Math.PI, noNaN: true });
const taper = (degrees: number): Transition => ({
  kind: 'taper',
  angle: (degrees * Math.PI) / 180,
});
const sudden: Transition = { kind: 'sudden' };

describe('change of area', () => {
  it('is nothing where nothing changes', () => {
    expect(areaChange(0.15, 0.15, sudden).fixed).toBe(0);
    expect(areaChange(0.15, 0.15, USUAL_TAPER).fixed).toBe(0);
  });

  it('never loses more in a cone than in a step, and never gains', () => {
    fc.assert(
      fc.property(diameter, diameter, angle, (from, to, cone) => {
        const conical = areaChange(from, to, { kind: 'taper', angle: cone }).fixed;
        expect(conical).toBeGreaterThanOrEqual(0);
        expect(conical).toBeLessThanOrEqual(areaChange(from, to, sudden).fixed);
      }),
    );
  });

  it('has no jump where the pipes become equal, nor in the angle', () => {
    fc.assert(
      fc.property(diameter, angle, (bore, cone) => {
        const shape: Transition = { kind: 'taper', angle: cone };
        expect(areaChange(bore, bore * (1 + 1e-9), shape).fixed).toBeLessThan(1e-8);
        expect(areaChange(bore * (1 + 1e-9), bore, shape).fixed).toBeLessThan(1e-8);
        const near: Transition = { kind: 'taper', angle: Math.max(0, cone - 1e-9) };
        for (const to of [0.7 * bore, 1.4 * bore]) {
          const gap = areaChange(bore, to, shape).fixed - areaChange(bore, to, near).fixed;
          expect(Math.abs(gap)).toBeLessThan(1e-8);
        }
      }),
    );
  });

  it('rises with the angle of the cone up to the step, and stays there', () => {
    const widening = [0, 10, 20, 30, 45, 60, 90, 180].map(
      (d) => areaChange(0.1, 0.15, taper(d)).fixed,
    );
    expect(widening).toEqual(widening.toSorted((a, b) => a - b));
    expect(widening.at(-1)).toBe(areaChange(0.1, 0.15, sudden).fixed);
    expect(areaChange(0.1, 0.15, taper(46)).fixed).toBe(areaChange(0.1, 0.15, sudden).fixed);
    expect(areaChange(0.15, 0.1, taper(45)).fixed).toBeLessThan(
      0.62 * areaChange(0.15, 0.1, sudden).fixed,
    );
    expect(areaChange(0.15, 0.1, taper(78)).fixed).toBe(areaChange(0.15, 0.1, sudden).fixed);
  });

  it('into a very wide pipe loses the whole velocity pressure, out of it half', () => {
    expect(areaChange(0.1, 100, sudden).fixed).toBeCloseTo(1, 5);
    expect(areaChange(100, 0.1, sudden).fixed).toBeCloseTo(0.5, 5);
  });

  it('takes a plain coefficient as it is', () => {
    expect(areaChange(0.1, 0.15, { kind: 'plain', coefficient: 0.35 }).fixed).toBe(0.35);
  });

  it('refuses what can not be', () => {
    expect(() => areaChange(0, 0.1, sudden)).toThrow('not 0');
    expect(() => areaChange(0.1, -1, sudden)).toThrow('not -1');
    expect(() => areaChange(0.1, 0.2, taper(-5))).toThrow(RangeError);
    expect(() => areaChange(0.1, 0.2, taper(181))).toThrow(RangeError);
  });
});
