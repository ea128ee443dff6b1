import { describe, expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { buildNetwork, type SectionInput } from '../../../src/solve/network.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

const section = (into: number, fixed: number, frictional: number): SectionInput => ({
  into,
  diameter: 0.1,
  roughness: 9e-5,
  frictional,
  fixed,
  join: { kind: 'momentum', angle: 0 },
});

describe('the branches of a network', () => {
  it('end at a wye, each with the sections of its own row', () => {
    // The flange, a wye of two; one inlet is a hood's own section, the other a row of three.
    const network = buildNetwork(
      [
        section(-1, 0, 10),
        section(0, 1, 0),
        section(0, 0.5, 20),
        section(2, 0.25, 30),
        section(3, 2, 40),
      ],
      AIR,
      colebrook,
    );
    const { end, last, resistance } = network.branches;
    expect([...end].map((place) => network.order[place])).toEqual([1, 4]);
    expect([...last].map((place) => network.order[place])).toEqual([1, 2]);
    // 90 diameters at a friction factor of 0.02 are 1.8; all in the same bore. 0.01 is always there.
    expect(resistance[0]! / network.dynamic[0]!).toBeCloseTo(1 + 0.01, 12);
    expect(resistance[1]! / network.dynamic[0]!).toBeCloseTo(0.5 + 0.25 + 2 + 1.8 + 0.01, 12);
  });

  it('reach the flange where there is no wye', () => {
    const { branches } = buildNetwork([section(-1, 1, 0), section(0, 1, 0)], AIR, colebrook);
    expect([...branches.end]).toEqual([1]);
    expect([...branches.last]).toEqual([0]);
  });
});
