// How a section joins its wye, as a form shows it.

import type { SectionJoin } from '../../shop/schema/section-schema.ts';
import { branchFactorSource } from '../assumptions/fitting-source.ts';
import { WYE_SOURCE } from '../assumptions/known-sources.ts';
import { sourceWords } from './figure-source.ts';

export interface JoinView {
  readonly join: SectionJoin;
  /** What the wye leads into, in words. */
  readonly into: string;
  /** How many inlets the wye has. */
  readonly inlets: number;
  readonly source: string;
}

/**
 * The join of a section as a form shows it.
 *
 * @param join - how it joins
 * @param into - what the wye leads into, in words
 * @param inlets - how many inlets the wye has [-]
 * @returns the view
 */
export function joinView(join: SectionJoin, into: string, inlets: number): JoinView {
  if (join.kind === 'momentum') return { join, into, inlets, source: sourceWords(WYE_SOURCE) };
  const tabulated = join.of === 'own' ? branchFactorSource(join.coefficient) : undefined;
  const source = tabulated ? sourceWords(tabulated) : 'entered for this shop';
  return { join, into, inlets, source };
}
