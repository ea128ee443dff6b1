// Changes of a test sheet. Each gives a new sheet; nothing that was read is lost by any but a removal.

import type { TestAir } from '../../curve/throttle-test/throttle-test.ts';
import type { ShopAir } from '../../shop/schema/air-schema.ts';
import { freshId } from '../../shop/edits/fresh-id.ts';
import type { TestSheet, TestSheetRow } from '../../shop/schema/test-schema.ts';
import { centreRange } from './guidance.ts';

/** Settings to begin with, besides the closed pipe. */
const SETTINGS_TO_START = 4;

type AirReading = TestSheetRow['air'];
/** The ways in which the air can be read. */
export type AirReadingKind = AirReading['kind'];

/**
 * A sheet to begin with: the closed pipe, and settings with one speed each at the centre.
 *
 * @param air - the air of the test until it is said
 * @returns the sheet
 */
export function startedTest(air: TestAir): TestSheet {
  const { low, usual, high } = centreRange();
  const settings = Array.from({ length: SETTINGS_TO_START }, (_, i) => ({
    id: `setting-${i + 2}`,
    air: { kind: 'velocity' } as const,
  }));
  return {
    air,
    centre: { factor: usual, tolerance: Number(((high - low) / 2).toFixed(3)) },
    traverse: { rule: 'log-tchebycheff', perDiameter: 6, diameters: 2 },
    instruments: {},
    rows: [{ id: 'setting-1', air: { kind: 'closed' } }, ...settings],
  };
}

/**
 * The air of the shop as that of a test.
 *
 * @param air - the air as the shop states it
 * @returns the same place and weather, or the same density
 */
export function testAirOf(air: ShopAir): TestAir {
  return air.kind === 'room' ? air : { kind: 'density', density: air.density };
}

/**
 * How many readings a traverse takes.
 *
 * @param test - the sheet
 * @returns places in all [-]
 */
export function placeCount({ traverse }: Pick<TestSheet, 'traverse'>): number {
  return traverse.perDiameter * traverse.diameters;
}

/**
 * A further setting, read in the way of the last one.
 *
 * @param test - the sheet
 * @returns the sheet with it
 */
export function withNewSetting(test: TestSheet): TestSheet {
  const id = freshId(
    'setting',
    test.rows.map((row) => row.id),
  );
  const last = test.rows.at(-1)?.air.kind ?? 'velocity';
  const kind = last === 'closed' ? 'velocity' : last;
  return { ...test, rows: [...test.rows, { id, air: emptyReading(test, kind) }] };
}

/**
 * A setting in place of the one of its id.
 *
 * @param test - the sheet
 * @param row - the setting as it is now
 * @returns the sheet with it
 */
export function withSetting(test: TestSheet, row: TestSheetRow): TestSheet {
  return { ...test, rows: test.rows.map((each) => (each.id === row.id ? row : each)) };
}

/**
 * The sheet without a setting.
 *
 * @param test - the sheet
 * @param id - of the setting
 * @returns the sheet without it
 */
export function withoutSetting(test: TestSheet, id: string): TestSheet {
  return { ...test, rows: test.rows.filter((row) => row.id !== id) };
}

/**
 * A setting whose air is read in another way. A reading of the same quantity is carried along.
 *
 * @param test - the sheet, for how many places a traverse has
 * @param row - the setting
 * @param kind - the other way
 * @returns the setting
 */
export function withReadingKind(
  test: TestSheet,
  row: TestSheetRow,
  kind: AirReadingKind,
): TestSheetRow {
  const { air } = row;
  const empty = emptyReading(test, kind);
  if (air.kind === 'closed' || empty.kind === 'closed') return { ...row, air: empty };
  if (quantityOf(air.kind) !== quantityOf(kind)) return { ...row, air: empty };
  const overRange = air.overRange === true ? { overRange: true as const } : {};
  const read = 'readings' in air ? air.readings[0] : air.reading;
  if (read === undefined || read === null) return { ...row, air: { ...empty, ...overRange } };
  if ('readings' in empty) {
    return { ...row, air: { ...empty, readings: empty.readings.with(0, read), ...overRange } };
  }
  return { ...row, air: { ...empty, reading: read, ...overRange } };
}

/**
 * A sheet whose traverses have other places. Readings keep their order; there is room for as many as
 * there are places now, and a reading beyond them stays until it is taken out.
 *
 * @param test - the sheet
 * @param traverse - the rule and the numbers of places
 * @returns the sheet
 */
export function withTraverse(test: TestSheet, traverse: TestSheet['traverse']): TestSheet {
  const count = placeCount({ traverse });
  const rows = test.rows.map((row) => {
    if (!('readings' in row.air)) return row;
    const used = row.air.readings.findLastIndex((reading) => reading !== null) + 1;
    const length = Math.max(count, used);
    const readings = Array.from({ length }, (_, i) => readingAt(row, i));
    return { ...row, air: { ...row.air, readings } };
  });
  return { ...test, traverse, rows };
}

function readingAt({ air }: TestSheetRow, i: number): number | null {
  return 'readings' in air ? (air.readings[i] ?? null) : null;
}

/** Velocity, velocity pressure, or nothing. */
function quantityOf(kind: AirReadingKind): string {
  return kind.replace('-traverse', '');
}

function emptyReading(test: TestSheet, kind: AirReadingKind): AirReading {
  switch (kind) {
    case 'closed':
    case 'velocity':
    case 'velocity-pressure':
      return { kind };
    case 'velocity-traverse':
    case 'velocity-pressure-traverse':
      return { kind, readings: Array.from({ length: placeCount(test) }, () => null) };
    default:
      return kind satisfies never;
  }
}
