import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findPipe, PIPE_FAMILIES } from '../../../src/duct/catalogue.ts';
import { hose, hoseCompressionFactor } from '../../../src/duct/hose.ts';
import { straightPipe } from '../../../src/duct/straight-pipe.ts';

describe('catalogue', () => {
  const all = PIPE_FAMILIES.flatMap((family) =>
    family.sizes.map((size) => ({ family: family.id, size: size.id })),
  );

  it.each(all)(
    '$family $size has a bore and a wall, and a source where it is called verified',
    ({ family, size }) => {
      const pipe = findPipe(family, size);
      expect(pipe?.diameter).toBeGreaterThan(0.04);
      expect(pipe?.diameter).toBeLessThan(0.45);
      const [low, high] = pipe?.roughnessRange ?? [1, 0];
      expect(pipe?.roughness).toBeGreaterThanOrEqual(low);
      expect(pipe?.roughness).toBeLessThanOrEqual(high);
      if (pipe?.diameterSource.status === 'verified') {
        expect(pipe.diameterSource.citation).not.toBe('');
      }
    },
  );

  it('keeps the sizes of a family apart', () => {
    expect(new Set(all.map(({ family, size }) => `${family} ${size}`)).size).toBe(all.length);
    for (const family of PIPE_FAMILIES) {
      const bores = family.sizes.map(({ diameter }) => diameter);
      expect(bores.every((bore) => bore > 0)).toBe(true);
    }
  });

  it('knows inside from nominal: two plastic 4 in. pipes differ in area', () => {
    const thick = findPipe('pvc-schedule-40', '4in')?.diameter ?? Number.NaN;
    const thin = findPipe('pvc-sewer-d2729', '4in')?.diameter ?? Number.NaN;
    expect((thin / thick) ** 2).toBeCloseTo(1.02, 2);
  });

  // ASTM D1785, D3034 and D2729, inside diameters in mm.
  it.each([
    ['pvc-schedule-40', '3in', 77.93],
    ['pvc-schedule-40', '4in', 102.26],
    ['pvc-schedule-40', '5in', 128.19],
    ['pvc-schedule-40', '6in', 154.05],
    ['pvc-schedule-40', '8in', 202.72],
    ['pvc-sdr-35', '4in', 100.96],
    ['pvc-sdr-35', '6in', 150.24],
    ['pvc-sdr-35', '8in', 201.17],
    ['pvc-sewer-d2729', '3in', 79.0],
    ['pvc-sewer-d2729', '4in', 103.3],
    ['pvc-sewer-d2729', '6in', 154.3],
    ['galvanised-spiral', '4in', 101.6],
    ['galvanised-spiral', '315mm', 315],
    ['hose-wire-helix', '2 1/2in', undefined],
    ['hose-wire-helix', '2.5in', 63.5],
  ])('%s %s is %d mm inside', (family, size, millimetres) => {
    const diameter = findPipe(family, size)?.diameter;
    if (millimetres === undefined) expect(diameter).toBeUndefined();
    else expect((diameter ?? Number.NaN) * 1000).toBeCloseTo(millimetres, 6);
  });

  it('says what is unsure', () => {
    expect(findPipe('hose-wire-helix', '4in')?.roughnessSource.status).toBe(
      'from memory, unverified',
    );
    expect(findPipe('pvc-sewer-d2729', '4in')?.diameterSource.status).toBe(
      'from memory, unverified',
    );
    expect(findPipe('galvanised-spiral', '4in')?.roughnessSource.status).toBe('verified');
  });

  it('has nothing that it has not', () => {
    expect(findPipe('galvanised-spiral', '7mm')).toBeUndefined();
    expect(findPipe('drainpipe', '4in')).toBeUndefined();
  });
});

describe('straight pipe and hose', () => {
  it('loses its length over its diameter', () => {
    expect(straightPipe(0, 0.1)).toEqual({ fixed: 0, frictional: 0 });
    expect(straightPipe(3, 0.15).frictional).toBeCloseTo(20, 12);
    expect(() => straightPipe(-1, 0.1)).toThrow('not -1');
    expect(() => straightPipe(1, 0)).toThrow('not 0');
  });

  it('is a straight pipe when pulled tight', () => {
    expect(hose(2, 0.1, 0)).toEqual(straightPipe(2, 0.1));
  });

  it('costs more the more it is pushed together, most in a narrow one', () => {
    const squeeze = fc.double({ min: 0, max: 0.6, noNaN: true });
    const bore = fc.double({ min: 0.05, max: 0.25, noNaN: true });
    fc.assert(
      fc.property(squeeze, squeeze, bore, (one, other, diameter) => {
        const [less, more] = one < other ? [one, other] : [other, one];
        const [loose, looser] = [less, more].map((c) => hoseCompressionFactor(c, diameter));
        expect(loose).toBeGreaterThanOrEqual(1);
        expect(looser).toBeGreaterThanOrEqual(loose ?? Number.NaN);
        expect(looser).toBeLessThanOrEqual(hoseCompressionFactor(more, diameter * 0.9));
      }),
    );
  });

  it('costs about five times as much at 15 % in 6 in., as measured (Abushakra et al. 2004)', () => {
    // The paper reports factors of that order; the fit's numbers are from memory.
    expect(hose(2, 0.1524, 0.15).frictional / straightPipe(2, 0.1524).frictional).toBeCloseTo(
      5.1,
      1,
    );
  });

  it('refuses a hose that is none', () => {
    expect(() => hoseCompressionFactor(0.7, 0.1)).toThrow('not 0.7');
    expect(() => hoseCompressionFactor(-0.1, 0.1)).toThrow('not -0.1');
    expect(() => hoseCompressionFactor(0.1, 0)).toThrow('not 0');
  });
});
