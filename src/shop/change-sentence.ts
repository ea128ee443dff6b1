// What the last change did to the speeds, in words: what was opened, shut or edited, which drop felt
// it most, and where chips now settle or no longer do.

import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { listed } from './listed.ts';
import type { Shop } from './schema/shop-schema.ts';
import type { DropReport, StateReport } from './state-report.ts';

/** A state of a shop. */
export interface ReportedShop {
  readonly shop: Shop;
  readonly report: Pick<StateReport, 'drops' | 'operatingPoint'>;
}

/** A drop before and after. */
interface Pair {
  readonly name: string;
  readonly before: DropReport;
  readonly after: DropReport;
}

/** Up to this many drops are named; of more only the number is told. */
const MOST_NAMED = 3;
/** A blade that moved less did not move [-]. */
const LEAST_TRAVEL = 0.005;
/** A speed that changed less, in parts of what it was, did not change [-]. */
const LEAST_CHANGE = 0.005;

/**
 * The last change in words.
 *
 * @param before - the state before it
 * @param after - the state now
 * @param system - the units to speak in
 * @returns such as 'Opening Floor sweep slows Planer from 4,340 to 2,870 ft/min.'
 */
export function changeSentence(
  before: ReportedShop,
  after: ReportedShop,
  system: UnitSystem,
): string {
  const pairs = pairsOf(before, after);
  const cause = causeWords(before, after, pairs);
  const stayed = pairs.filter((pair) => isOpen(pair.before) && isOpen(pair.after));
  return [`${cause} ${effectWords(pairs, stayed, system)}.`, ...settling(stayed)].join(' ');
}

function pairsOf(before: ReportedShop, after: ReportedShop): Pair[] {
  return after.report.drops.flatMap((drop) => {
    const former = before.report.drops.find(({ id }) => id === drop.id);
    const name = after.shop.drops.find(({ id }) => id === drop.id)?.name ?? drop.name;
    return former === undefined ? [] : [{ name, before: former, after: drop }];
  });
}

function isOpen({ travel }: DropReport): boolean {
  return travel > 0;
}

function causeWords(before: ReportedShop, after: ReportedShop, pairs: readonly Pair[]): string {
  const names = (which: (pair: Pair) => boolean) => pairs.filter(which).map(({ name }) => name);
  const opened = names((pair) => !isOpen(pair.before) && isOpen(pair.after));
  const shut = names((pair) => isOpen(pair.before) && !isOpen(pair.after));
  const moved = pairs.filter(
    (pair) =>
      isOpen(pair.before) &&
      isOpen(pair.after) &&
      Math.abs(pair.after.travel - pair.before.travel) > LEAST_TRAVEL,
  );
  const count = opened.length + shut.length + moved.length;
  if (count === 0) return before.shop === after.shop ? 'The change' : 'The last edit';
  if (count > MOST_NAMED + 1) return 'Moving the gates';
  const deeds = [
    ...(opened.length > 0 ? [`opening ${listed(opened)}`] : []),
    ...(shut.length > 0 ? [`shutting ${listed(shut)}`] : []),
    ...moved.map(({ name, after: now }) => `setting the gate of ${name} to ${percent(now.travel)}`),
  ];
  return capitalised(listed(deeds));
}

/** The drop that felt it most; where none was open both before and after, the one opened. */
function effectWords(pairs: readonly Pair[], stayed: readonly Pair[], system: UnitSystem): string {
  const most = stayed.toSorted((a, b) => strength(b) - strength(a))[0];
  if (most !== undefined) {
    if (strength(most) < LEAST_CHANGE) return 'changes no speed to speak of';
    const { name, before, after } = most;
    const verb = after.velocity < before.velocity ? 'slows' : 'speeds up';
    const from = formatQuantity('velocity', system, before.velocity).number;
    return `${verb} ${name} from ${from} to ${formatQuantity('velocity', system, after.velocity).text}`;
  }
  const fresh = pairs.filter(({ after }) => isOpen(after));
  if (fresh.length === 0) return 'leaves nothing open';
  const speeds = fresh.slice(0, MOST_NAMED).map(({ name, after }) => {
    return `${name} ${formatQuantity('velocity', system, after.velocity).text}`;
  });
  return `gives ${listed(speeds)}`;
}

function strength({ before, after }: Pair): number {
  const larger = Math.max(Math.abs(before.velocity), Math.abs(after.velocity));
  return larger === 0 ? 0 : Math.abs(after.velocity - before.velocity) / larger;
}

function settling(stayed: readonly Pair[]): string[] {
  const turned = (settlesNow: boolean) =>
    stayed
      .filter(
        ({ before, after }) =>
          (after.verdict === 'settles') === settlesNow &&
          (before.verdict === 'settles') !== settlesNow,
      )
      .map(({ name }) => name);
  const worse = turned(true);
  const better = turned(false);
  return [
    ...(worse.length > 0 ? [`Chips now settle on the way of ${named(worse)}.`] : []),
    ...(better.length > 0 ? [`Chips no longer settle on the way of ${named(better)}.`] : []),
  ];
}

function named(names: readonly string[]): string {
  return names.length > MOST_NAMED ? `${names.length} drops` : listed(names);
}

function percent(travel: number): string {
  return `${Math.round(100 * travel)}\u2009%`;
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
