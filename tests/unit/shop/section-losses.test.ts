// Coefficients against hand figures. Verified elsewhere: a 90° mitre 1.2021, a sudden widening
// (1 − A1/A2)², hose pushed together by 15 % at 6 in. 5.085 times the friction.
import { describe, expect, it } from 'vitest';
import { checkFreeEnds } from '../../../src/shop/opening/check-free-ends.ts';
import type { Drop } from '../../../src/shop/schema/drop-schema.ts';
import type { Section } from '../../../src/shop/schema/section-schema.ts';
import { sectionLosses } from '../../../src/shop/section-losses.ts';
import { sectionTree } from '../../../src/shop/section-tree.ts';
import { smallShop } from './small-shop.ts';

const run: Section = {
  id: 'run',
  into: 'collector',
  pipe: { kind: 'custom', diameter: 0.1, roughness: 0 },
  length: 0,
  fittings: [],
};
const free: Drop = {
  id: 'd',
  name: 'd',
  into: 'run',
  hood: { kind: 'coefficient', coefficient: 0 },
};

function lossesOf(section: Partial<Section>, drop: Partial<Drop> = {}) {
  const shop = { sections: [{ ...run, ...section }], drops: [{ ...free, ...drop }] };
  const [losses] = sectionLosses(shop, sectionTree(shop), 1.2);
  if (losses === undefined) throw new Error('no section');
  return losses;
}

describe('sectionLosses', () => {
  it('takes length over diameter, and more where a hose is pushed together', () => {
    expect(lossesOf({ length: 3 }).run).toEqual({ fixed: 0, frictional: 30 });
    const pipe = { kind: 'catalogue', family: 'hose-smooth-bore', size: '6in' } as const;
    const pushed = lossesOf({ length: 1.524, pipe, compression: 0.15 });
    expect(pushed.run.frictional).toBeCloseTo(50.85, 2);
  });

  it('sums fittings with their count, by shape or by their own coefficient', () => {
    const fittings: Section['fittings'] = [
      { kind: 'mitre', angle: 90, count: 2 },
      { kind: 'gored', pieces: 5, radius: 1.5, angle: 45, coefficient: 0.2 },
      { kind: 'plain', coefficient: 0.35, count: 2 },
    ];
    expect(lossesOf({ fittings }).run.fixed).toBeCloseTo(2 * 1.2021 + 0.2 + 0.7, 3);
    const bend: Section['fittings'] = [{ kind: 'bend', angle: 90, radius: 1.5, coefficient: 0 }];
    expect(lossesOf({ fittings: bend }).run).toEqual({ fixed: 0, frictional: 0 });
  });

  it('restates a hood in a narrower port on the pipe, and widens by itself', () => {
    const hood = { kind: 'coefficient', coefficient: 1 } as const;
    const sudden = lossesOf({}, { hood, port: 0.05, transition: { kind: 'sudden' } });
    // On the velocity pressure of the port, sixteen times that of the pipe: 1 + (1 − 1/4)².
    expect(sudden.run.fixed).toBeCloseTo(16 * (1 + 0.5625), 9);
    const cone = lossesOf({}, { hood, port: 0.05 });
    expect(cone.run.fixed).toBeGreaterThan(16);
    expect(cone.run.fixed).toBeLessThan(sudden.run.fixed);
  });

  it('reads a hood from the table, and from a suction and a speed', () => {
    expect(lossesOf({}, { hood: { kind: 'table', id: 'plain-end' } }).run.fixed).toBe(0.93);
    const hood = { kind: 'measured', suction: 480, velocity: 20 } as const;
    expect(lossesOf({}, { hood }).run.fixed).toBeCloseTo(1, 12);
  });

  it('keeps the change of diameter at a section’s end apart, on its own velocity pressure', () => {
    const tree = sectionTree(smallShop);
    const [main, planerRun, planerEnd, sawRun] = sectionLosses(smallShop, tree, 1.2);
    expect([main?.change, planerRun?.change, sawRun?.change]).toEqual([0, 0, 0]);
    // 100 → 125 mm, a cone of 20°: (1 − 0.64)² · 2.6 · sin 10°.
    expect(planerEnd?.change).toBeCloseTo(0.1296 * 2.6 * 0.173648, 6);
  });

  it('stops at a pipe or a hood that no table has', () => {
    const pipe = { kind: 'catalogue', family: 'straw', size: '5mm' } as const;
    expect(() => lossesOf({ pipe })).toThrow(RangeError);
    expect(() => lossesOf({}, { hood: { kind: 'table', id: 'funnel' } })).toThrow(RangeError);
  });
});

describe('checkFreeEnds', () => {
  const fault = (section: Partial<Section>, drop: Partial<Drop>) => {
    const shop = {
      ...smallShop,
      sections: [{ ...run, ...section }],
      drops: [{ ...free, ...drop }],
    };
    return checkFreeEnds(shop, sectionTree(shop)).length;
  };

  it('asks for any resistance at all before the next wye', () => {
    expect(fault({}, {})).toBe(1);
    expect(fault({ length: 0.1 }, {})).toBe(0);
    expect(fault({}, { gate: { travel: 1 } })).toBe(0);
    expect(fault({}, { gate: { travel: 1, slotLoss: 0 } })).toBe(1);
    expect(fault({}, { hood: { kind: 'coefficient', coefficient: 0.1 } })).toBe(0);
    expect(fault({ fittings: [{ kind: 'plain', coefficient: 0 }] }, {})).toBe(1);
  });
});
