// One collector, or several alike side by side or one behind the other, as a choice.

import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { Choice } from '../choice-field/choice-field.ts';

type Arrangement = Collector['arrangement'];

const ALONE = 'one';

/** In the order in which they are offered. */
export const ARRANGEMENTS: readonly Choice[] = [
  { value: ALONE, words: 'one' },
  { value: 'parallel 2', words: 'two alike, side by side' },
  { value: 'series 2', words: 'two alike, one behind the other' },
  { value: 'parallel 3', words: 'three alike, side by side' },
  { value: 'series 3', words: 'three alike, one behind the other' },
];

/** The choice that says an arrangement. */
export function arrangementKey(arrangement: Arrangement): string {
  return arrangement ? `${arrangement.kind} ${arrangement.count}` : ALONE;
}

/** The arrangement of a choice; undefined for one collector. */
export function arrangementOf(key: string): Arrangement {
  const [kind, count] = key.split(' ');
  if (kind !== 'parallel' && kind !== 'series') return undefined;
  return { kind, count: Number(count) };
}
