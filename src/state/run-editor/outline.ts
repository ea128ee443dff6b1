// The run as an outline: one row a drop and a section, in the order in which the air flows or from
// the collector outwards. A line of pipe that goes straight on stays at one depth; what joins it from
// the side stands one deeper, at the section it empties into.

import { pipeNumbers } from '../../shop/pipe-of.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Section, SectionJoin } from '../../shop/schema/section-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { AT_FLANGE, type SectionTree, sectionTree } from '../../shop/section-tree.ts';
import { inletsOf, isStraight } from '../../shop/straight-run.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { Part } from '../selected-part.ts';
import { partLabel } from './part-label.ts';

/** From the drops to the collector, or the other way round. */
export type OutlineOrder = 'flow' | 'outward';

export interface OutlineRow extends Part {
  readonly name: string;
  /** What there is to know of it at a glance. */
  readonly facts: string;
  /** 0 for the main line, one more for each wye that lies between. */
  readonly depth: number;
  /** How it joins its wye; empty where it goes straight on. */
  readonly joins: string;
  /** Whether it joins a line of pipe from the side. */
  readonly isBranch: boolean;
  /** Whether a line of pipe begins here: at a drop. */
  readonly isEnd: boolean;
}

/**
 * The outline of a shop's run.
 *
 * @param shop - sections and drops
 * @param order - along the air, or against it
 * @param system - the units to speak in
 * @returns its rows, from top to bottom
 */
export function runOutline(
  shop: Pick<Shop, 'sections' | 'drops'>,
  order: OutlineOrder,
  system: UnitSystem,
): readonly OutlineRow[] {
  const tree = sectionTree(shop);
  const rows = lineRows(shop, tree, tree.into.indexOf(AT_FLANGE), 0, system);
  return order === 'flow' ? rows : rows.toReversed();
}

/** A line of pipe and all that joins it, in the order of the air. */
function lineRows(
  shop: Pick<Shop, 'sections' | 'drops'>,
  tree: SectionTree,
  at: number,
  depth: number,
  system: UnitSystem,
): OutlineRow[] {
  const section = shop.sections[at];
  if (section === undefined) return [];
  const { straight, branches } = inletsOf(shop.sections, tree, at);
  const own: OutlineRow = {
    kind: 'section',
    id: section.id,
    name: partLabel(section),
    facts: factsOf(section, system),
    depth,
    joins: section.join && !isStraight(section.join) ? joinWords(section.join) : '',
    isBranch: isBranch(shop, tree, at),
    isEnd: false,
  };
  return [
    ...dropRows(shop, tree, at, depth),
    ...(straight === undefined ? [] : lineRows(shop, tree, straight, depth, system)),
    ...branches.flatMap((branch) => lineRows(shop, tree, branch, depth + 1, system)),
    own,
  ];
}

function isBranch(shop: Pick<Shop, 'sections'>, tree: SectionTree, at: number): boolean {
  return inletsOf(shop.sections, tree, tree.into[at] ?? AT_FLANGE).branches.includes(at);
}

function dropRows(
  shop: Pick<Shop, 'drops'>,
  tree: SectionTree,
  at: number,
  depth: number,
): OutlineRow[] {
  const drop = shop.drops[tree.drops[at]?.[0] ?? -1];
  if (drop === undefined) return [];
  const facts = drop.gate ? 'drop, with a gate' : 'drop, always open';
  return [
    {
      kind: 'drop',
      id: drop.id,
      name: drop.name,
      facts,
      depth,
      joins: '',
      isBranch: false,
      isEnd: true,
    },
  ];
}

function factsOf({ pipe, length, fittings }: Section, system: UnitSystem): string {
  const diameter = pipeNumbers(pipe)?.diameter;
  const size = diameter === undefined ? '' : formatQuantity('diameter', system, diameter).text;
  const parts = [size, formatQuantity('length', system, length).text, fittingWords(fittings)];
  return parts.filter((part) => part !== '').join(' · ');
}

function fittingWords(fittings: readonly Fitting[]): string {
  const count = fittings.reduce((sum, fitting) => sum + (fitting.count ?? 1), 0);
  if (count === 0) return '';
  return count === 1 ? '1 fitting' : `${count} fittings`;
}

function joinWords(join: SectionJoin): string {
  if (join.kind === 'fixed') return `joins with K ${join.coefficient}`;
  return `joins at ${Number(join.angle.toFixed(1))}°`;
}
