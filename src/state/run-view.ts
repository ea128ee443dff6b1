// The run of ducts as its drawing shows it: everything in the reader's units and words.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import type { StateReport } from '../shop/state-report.ts';
import type { Verdict } from '../shop/verdict.ts';
import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';

/** How a section fares: `still` where no open drop's air passes. */
export type RunState = 'still' | 'settles' | 'carries' | 'tight';

/** How closely a length is written on the drawing [m]. */
const LENGTH_STEP: Readonly<Record<UnitSystem, number>> = { us: 0.0254, metric: 0.01 };

/** What of a section stays as it is while gates move. */
export interface SectionShape {
  readonly id: string;
  readonly name: string;
  /** Place in the list of the section that it empties into; -1 at the collector. */
  readonly into: number;
  /** Whether it goes straight on through the wye that it empties into. */
  readonly straight: boolean;
  /** Inside diameter [m] */
  readonly diameter: number;
  /** Inside diameter and length as they are written; the length in whole inches or centimetres. */
  readonly size: string;
  readonly length: string;
}

/** One section, ready to be drawn. */
export interface SectionView extends SectionShape {
  readonly state: RunState;
  /** Speed as it is written, without its unit. */
  readonly speed: string;
  /** The drop that feeds it, where it is an open end. */
  readonly drop: RunDrop | undefined;
}

/** A drop at an open end. */
export interface RunDrop {
  readonly id: string;
  readonly name: string;
  readonly verdict: Verdict;
}

/**
 * The sections of a shop, whatever its gates do.
 *
 * @param shop - names, lengths and joins
 * @param model - the shop, ready to be balanced
 * @param system - the units to speak in
 * @returns the sections, in the order of the document
 */
export function runShape(shop: Shop, model: ShopModel, system: UnitSystem): SectionShape[] {
  const { tree, sections } = model.ducts;
  return shop.sections.map((section, i) => {
    const { diameter } = sections[i]!.pipe;
    const length = Math.round(section.length / LENGTH_STEP[system]) * LENGTH_STEP[system];
    return {
      id: section.id,
      name: section.name ?? section.id,
      into: tree.into[i]!,
      straight: section.join?.kind === 'momentum' && section.join.angle === 0,
      diameter,
      size: formatQuantity('diameter', system, diameter).text,
      length: formatQuantity('length', system, length).text,
    };
  });
}

/**
 * The sections of a shop in one state of its gates.
 *
 * @param shop - names and the carrying range
 * @param model - the shop, ready to be balanced
 * @param report - the state
 * @param system - the units to speak in
 * @param shape - the sections, where they are at hand
 * @returns the sections, in the order of the document
 */
export function runView(
  shop: Shop,
  model: ShopModel,
  report: StateReport,
  system: UnitSystem,
  shape: readonly SectionShape[] = runShape(shop, model, system),
): SectionView[] {
  const { tree, drops } = model.ducts;
  const flowing = new Set(drops.flatMap(({ way }, i) => (report.drops[i]!.travel > 0 ? way : [])));
  return shape.map((section, i) => {
    const { velocity } = report.sections[i]!;
    const drop = tree.drops[i]![0];
    const flows = flowing.has(i);
    return {
      ...section,
      state: flows ? stateAt(velocity, shop.carryingRange) : 'still',
      speed: flows ? formatQuantity('velocity', system, velocity).number : '',
      drop: drop === undefined ? undefined : dropOf(shop, report, drop),
    };
  });
}

function dropOf(shop: Shop, report: StateReport, drop: number): RunDrop {
  const { id, name } = shop.drops[drop]!;
  return { id, name, verdict: report.drops[drop]!.verdict };
}

function stateAt(velocity: number, range: Shop['carryingRange']): RunState {
  if (velocity < range.low) return 'settles';
  return velocity > range.high ? 'tight' : 'carries';
}
