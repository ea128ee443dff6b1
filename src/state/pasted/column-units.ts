// In what unit a column's numbers are: as its cells say, else its heading, else as was answered; and
// which units are left to ask for where nothing says it.

import type { UnitSystem } from '../../units/quantity.ts';
import { toSi, type Unit, type UnitName, UNITS } from '../../units/unit.ts';
import { unitBehind } from './column-hint.ts';
import type { PastedColumn } from './pasted-table.ts';

/** The units of a column. */
export type ColumnUnits =
  /** One for each amount. */
  | { readonly kind: 'said'; readonly units: readonly Unit[]; readonly main: Unit }
  | { readonly kind: 'unsaid' }
  | { readonly kind: 'unknown'; readonly written: string };

/** Units to ask for, those of the page first. */
const ASKED: Readonly<
  Record<'flow' | 'pressure', Readonly<Record<UnitSystem, readonly UnitName[]>>>
> = {
  flow: {
    us: [
      'cfm',
      'cubicMetrePerHour',
      'litrePerSecond',
      'cubicMetrePerSecond',
      'cubicMetrePerMinute',
    ],
    metric: [
      'cubicMetrePerHour',
      'litrePerSecond',
      'cubicMetrePerSecond',
      'cubicMetrePerMinute',
      'cfm',
    ],
  },
  pressure: {
    us: ['inchOfWater', 'pascal', 'kilopascal', 'millimetreOfWater', 'hectopascal'],
    metric: ['pascal', 'kilopascal', 'hectopascal', 'millimetreOfWater', 'inchOfWater'],
  },
};
/**
 * Greatest flow [m³/s] and pressure [Pa] of a curve lie between these, or it is no collector: 20 to
 * 40,000 cfm, and 0.4 to 100 in. w.g. (common practice, no source).
 */
const LIKELY = { flow: [0.0094, 19], pressure: [100, 25_000] } as const;

/**
 * The units of a column.
 *
 * @param column - heading and amounts
 * @param holds - what its amounts are
 * @param answered - the unit that was answered for those without one
 * @returns a unit for each amount, or why there is none
 */
export function columnUnits(
  { hint, amounts }: PastedColumn,
  holds: 'flow' | 'pressure',
  answered: UnitName | undefined,
): ColumnUnits {
  const written = amounts.map((amount) => {
    const unit = amount && amount.unit !== '' ? unitBehind(amount.unit) : undefined;
    return { text: amount?.unit ?? '', unit: unit?.dimension === holds ? unit : undefined };
  });
  const strange = written.find(({ text, unit }) => text !== '' && !unit);
  if (strange) return { kind: 'unknown', written: strange.text };
  const named = [...new Set(written.flatMap(({ unit }) => unit ?? []))];
  const rest =
    hint.unit ?? (answered && UNITS[answered]) ?? (named.length === 1 ? named[0] : undefined);
  const units = written.map(({ unit }) => unit ?? rest);
  const isSaid = units.every((unit) => unit !== undefined);
  return isSaid ? { kind: 'said', units, main: rest ?? units[0]! } : { kind: 'unsaid' };
}

/**
 * The units that a flow or a pressure can be asked for in.
 *
 * @param holds - what it is
 * @param system - the page's units, which come first
 * @returns names of units
 */
export function askedUnits(holds: 'flow' | 'pressure', system: UnitSystem): readonly UnitName[] {
  return ASKED[holds][system];
}

/**
 * The units in which a column would be a collector's.
 *
 * @param column - its amounts without a unit
 * @param holds - what its amounts are
 * @param system - the page's units, which come first
 * @returns names of units, the likelier first
 */
export function likelyUnits(
  { amounts }: PastedColumn,
  holds: 'flow' | 'pressure',
  system: UnitSystem,
): readonly UnitName[] {
  return ASKED[holds][system].filter((name) =>
    isLikely(
      holds,
      amounts.map((amount) => toSi(UNITS[name], amount?.value ?? 0)),
    ),
  );
}

/**
 * Whether amounts could be a collector's.
 *
 * @param holds - what they are
 * @param values - flows [m³/s] or pressures [Pa]
 * @returns whether the greatest lies within reason
 */
export function isLikely(holds: 'flow' | 'pressure', values: readonly number[]): boolean {
  const greatest = Math.max(...values.map(Math.abs));
  return greatest >= LIKELY[holds][0] && greatest <= LIKELY[holds][1];
}
