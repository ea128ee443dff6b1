// A small shop in order, to be broken or changed by the tests: two branches that join in a wye, the
// planer's with a change of diameter on its way. Sections: main, planer-run, planer-end, saw-run.
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';

export const smallShop: Shop = {
  format: 'dropcurve-shop',
  version: 1,
  units: 'SI',
  name: 'Two machines',
  air: { kind: 'plain', density: 1.2, viscosity: 1.81e-5 },
  collector: {
    curve: {
      format: 'dropcurve-curve',
      version: 1,
      units: 'SI',
      name: 'invented',
      basis: { kind: 'total' },
      includes: { filter: true, separator: true },
      density: 1.2,
      points: [
        { flow: 0, pressure: 2400 },
        { flow: 0.1, pressure: 2220 },
        { flow: 0.2, pressure: 1680 },
        { flow: 0.35, pressure: 195 },
      ],
    },
    filter: { kind: 'none' },
    separator: { kind: 'none' },
  },
  carryingRange: { low: 17.78, high: 22.86 },
  sections: [
    {
      id: 'main',
      name: 'Main',
      into: 'collector',
      pipe: { kind: 'custom', diameter: 0.15, roughness: 9e-5 },
      length: 6,
      fittings: [{ kind: 'bend', angle: 90, radius: 1.5 }],
    },
    {
      id: 'planer-run',
      into: 'main',
      pipe: { kind: 'custom', diameter: 0.125, roughness: 9e-5 },
      length: 3,
      fittings: [],
      join: { kind: 'momentum', angle: 0 },
    },
    {
      id: 'planer-end',
      into: 'planer-run',
      pipe: { kind: 'custom', diameter: 0.1, roughness: 1e-3 },
      length: 1,
      fittings: [{ kind: 'plain', coefficient: 0.2 }],
      transition: { kind: 'taper', angle: 20 },
    },
    {
      id: 'saw-run',
      into: 'main',
      pipe: { kind: 'custom', diameter: 0.1, roughness: 9e-5 },
      length: 2,
      fittings: [],
      join: { kind: 'momentum', angle: 45 },
    },
  ],
  drops: [
    {
      id: 'planer',
      name: 'Planer',
      into: 'planer-end',
      hood: { kind: 'coefficient', coefficient: 0.65 },
      gate: { travel: 1 },
    },
    {
      id: 'saw',
      name: 'Band saw',
      into: 'saw-run',
      hood: { kind: 'coefficient', coefficient: 0.93 },
      gate: { travel: 1 },
      need: 0.1,
    },
  ],
  gateSets: [{ id: 'both', name: 'Both', open: ['planer', 'saw'] }],
};
