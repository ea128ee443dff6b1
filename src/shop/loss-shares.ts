// What takes the suction on one drop's way, kind by kind, and the largest of it in a sentence.

import { formatQuantity } from '../units/format.ts';
import { toDisplay, type UnitSystem, unitLabel } from '../units/quantity.ts';
import { listed } from './listed.ts';
import type { PathPart, PathStep } from './path-losses.ts';
import { fittingWords } from './path-words.ts';

/** All parts of one kind together. */
export interface LossShare {
  /** Total pressure that they lose [Pa] */
  readonly loss: number;
  /** Of all that is lost on the way [-] */
  readonly share: number;
  /** How many there are of what is counted [-] */
  readonly count: number;
  /** Their length together, 0 where they are counted [m] */
  readonly length: number;
  readonly kind: ShareKind;
  /** What it is called, where its kind has no word of its own. */
  readonly name: string | undefined;
}

type ShareKind = 'hood' | 'gate' | 'pipe' | 'hose' | 'bend' | 'change' | 'wye' | 'other';

/** So many are named, and none that takes less than the least. */
const MOST_NAMED = 3;
const LEAST_NAMED = 0.08;
/** A longer pipe is told in whole feet or tenths of a metre [m]. */
const ROUNDED_FROM = 0.9144;

/**
 * The losses on a drop's way, kind by kind.
 *
 * @param steps - the parts on the way
 * @returns the kinds, the largest loss first; their losses add up to those of the steps
 */
export function lossShares(steps: readonly PathStep[]): LossShare[] {
  const all = steps.reduce((sum, { loss }) => sum + loss, 0);
  const shares = new Map<string, LossShare>();
  for (const { part, loss } of steps) {
    const { kind, name, count, length } = shareOf(part);
    const key = `${kind} ${name ?? ''}`;
    const former = shares.get(key);
    const sum = (former?.loss ?? 0) + loss;
    shares.set(key, {
      kind,
      name,
      loss: sum,
      share: all === 0 ? 0 : sum / all,
      count: (former?.count ?? 0) + count,
      length: (former?.length ?? 0) + length,
    });
  }
  return [...shares.values()].toSorted((a, b) => b.loss - a.loss);
}

/**
 * The largest losses in a sentence.
 *
 * @param name - what the drop is called
 * @param steps - the parts on its way
 * @param system - the units to speak in
 * @returns such as 'Of the 7.61 in. w.g. … 14 ft of hose takes 31 %, 5 bends 20 %.'
 */
export function lossSentence(name: string, steps: readonly PathStep[], system: UnitSystem): string {
  const shares = lossShares(steps);
  const all = shares.reduce((sum, { loss }) => sum + loss, 0);
  const named = shares.filter(({ share }, i) => i < MOST_NAMED && share >= LEAST_NAMED);
  const [first, ...others] = named;
  if (first === undefined) return '';
  const head = `${shareWords(first, system)} ${isMany(first) ? 'take' : 'takes'} ${percent(first)}`;
  const rest = others.map((share) => `${shareWords(share, system)} ${percent(share)}`);
  const suction = formatQuantity('pressure', system, all).text;
  return `${name}: of ${suction} on the way to the collector, ${listed([head, ...rest])}.`;
}

/**
 * A kind of loss with its number or length.
 *
 * @param share - all parts of one kind
 * @param system - the units to speak in
 * @returns such as '14 ft of hose', '5 bends' or 'the hood'
 */
export function shareWords(share: LossShare, system: UnitSystem): string {
  const { kind, count } = share;
  switch (kind) {
    case 'hood':
    case 'gate':
      return `the ${kind}`;
    case 'pipe':
    case 'hose':
      return `${roughLength(share.length, system)} of ${kind}`;
    case 'bend':
    case 'wye':
      return count === 1 ? `one ${kind}` : `${count} ${kind}s`;
    case 'change':
      return count === 1 ? 'one change of diameter' : `${count} changes of diameter`;
    case 'other':
      return share.name ?? 'other losses';
  }
}

function isMany({ kind, count }: LossShare): boolean {
  return count > 1 && (kind === 'bend' || kind === 'wye' || kind === 'change');
}

function percent({ share }: LossShare): string {
  return `${formatQuantity('fraction', 'us', Math.round(100 * share) / 100).number}\u2009%`;
}

function shareOf(part: PathPart): Pick<LossShare, 'kind' | 'name' | 'count' | 'length'> {
  switch (part.kind) {
    case 'hood':
    case 'gate':
    case 'wye':
    case 'change':
      return { kind: part.kind, name: undefined, count: 1, length: 0 };
    case 'port':
      return { kind: 'change', name: undefined, count: 1, length: 0 };
    case 'pipe':
    case 'hose':
      return { kind: part.kind, name: undefined, count: 0, length: part.length };
    case 'fitting': {
      const { fitting } = part;
      const count = fitting.count ?? 1;
      return fitting.kind === 'plain'
        ? { kind: 'other', name: `the ${fittingWords({ ...fitting, count: 1 })}`, count, length: 0 }
        : { kind: 'bend', name: undefined, count, length: 0 };
    }
  }
}

function roughLength(length: number, system: UnitSystem): string {
  if (length < ROUNDED_FROM) return formatQuantity('length', system, length).text;
  const shown = toDisplay('length', system, length);
  const digits = system === 'us' ? shown.toFixed(0) : shown.toFixed(1);
  return `${digits}\u2009${unitLabel('length', system)}`;
}
