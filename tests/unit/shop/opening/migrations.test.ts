import { describe, expect, it } from 'vitest';
import {
  CURVE_HISTORY,
  migrate,
  SHOP_HISTORY,
  type VersionHistory,
} from '../../../../src/shop/opening/migrations.ts';

const birdhouses: VersionHistory = {
  format: 'birdhouse',
  newest: 3,
  migrations: [
    {
      name: 'the hole has a diameter in place of a radius',
      from: 1,
      migrate: ({ radius, ...rest }) => ({ ...rest, diameter: 2 * Number(radius) }),
    },
    { name: 'a perch, none before', from: 2, migrate: (house) => ({ ...house, perch: false }) },
  ],
};

describe('migrate', () => {
  it('takes an old document through every step in turn and names them', () => {
    const old = { format: 'birdhouse', version: 1, radius: 16 };
    expect(migrate(old, birdhouses)).toEqual({
      kind: 'current',
      document: { format: 'birdhouse', version: 3, diameter: 32, perch: false },
      steps: ['the hole has a diameter in place of a radius', 'a perch, none before'],
    });
    expect(old).toEqual({ format: 'birdhouse', version: 1, radius: 16 });
  });

  it('takes only the steps that are left', () => {
    const migrated = migrate({ format: 'birdhouse', version: 2, diameter: 32 }, birdhouses);
    expect(migrated).toMatchObject({ steps: ['a perch, none before'] });
  });

  it('leaves a document of today as it is', () => {
    const today = { format: 'birdhouse', version: 3, diameter: 32, perch: true };
    expect(migrate(today, birdhouses)).toEqual({ kind: 'current', document: today, steps: [] });
  });

  it('refuses a newer version, and what is no version', () => {
    for (const version of [4, 1e6, 0, -1, 1.5, '1', null, undefined]) {
      expect(migrate({ format: 'birdhouse', version }, birdhouses).kind).toBe('refused');
    }
  });

  it('stops at a step that nobody wrote: a fault of the program, not of the file', () => {
    const gap = { ...birdhouses, migrations: birdhouses.migrations.slice(1) };
    expect(() => migrate({ version: 1 }, gap)).toThrow(RangeError);
  });
});

describe('the histories of the formats', () => {
  it.each([SHOP_HISTORY, CURVE_HISTORY])('of $format have a step from every older version', (h) => {
    const from = h.migrations.map((migration) => migration.from);
    expect(from).toEqual(Array.from({ length: h.newest - 1 }, (_, i) => i + 1));
  });
});
