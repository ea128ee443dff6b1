// One section as its form shows it.

import { hoseCompressionFactor } from '../../duct/hose.ts';
import type { Section } from '../../shop/schema/section-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { ShopModel } from '../../shop/shop-model.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { HOSE_SOURCE } from '../assumptions/known-sources.ts';
import { sourceWords } from './figure-source.ts';
import { type FittingView, fittingView } from './fitting-view.ts';
import { type JoinView, joinView } from './join-view.ts';
import { partLabel } from './part-label.ts';
import { type PipeView, pipeView } from './pipe-view.ts';
import { type ReducerView, reducerView } from './reducer-view.ts';

export interface SectionFormView {
  readonly section: Section;
  readonly label: string;
  /** What it empties into, in words. */
  readonly into: string;
  readonly pipe: PipeView;
  /** What pushing the hose together costs, and where that comes from; empty for pipe. */
  readonly hoseWords: string;
  readonly fittings: readonly FittingView[];
  /** Where it is an inlet of a wye. */
  readonly join: JoinView | undefined;
  /** Where it empties into a single pipe of another diameter. */
  readonly reducer: ReducerView | undefined;
}

/**
 * A section as its form shows it.
 *
 * @param shop - the shop
 * @param model - the shop, ready to be balanced
 * @param id - id of the section
 * @param system - the units to speak in
 * @returns the view, or undefined if the shop has no such section
 */
export function sectionFormView(
  shop: Shop,
  model: ShopModel,
  id: string,
  system: UnitSystem,
): SectionFormView | undefined {
  const { tree } = model.ducts;
  const at = tree.position.get(id) ?? -1;
  const section = shop.sections[at];
  const pipe = model.ducts.sections[at]?.pipe;
  if (section === undefined || pipe === undefined) return undefined;
  const next = tree.into[at] ?? -1;
  const nextSection = shop.sections[next];
  const nextPipe = model.ducts.sections[next]?.pipe;
  const into = nextSection ? partLabel(nextSection) : 'the collector';
  const inlets = tree.inlets[next]?.length ?? 0;
  const { low, high } = model.carryingRange;
  const place = { pipe, air: model.air, velocity: (low + high) / 2 };
  return {
    section,
    label: partLabel(section),
    into,
    pipe: pipeView(section.pipe),
    hoseWords: hoseWords(section.compression ?? 0, pipe.diameter, system),
    fittings: section.fittings.map((fitting) => fittingView(fitting, place, system)),
    join: section.join && joinView(section.join, into, inlets),
    reducer:
      nextPipe === undefined || inlets !== 1
        ? undefined
        : reducerView(pipe.diameter, nextPipe.diameter, section.transition, system),
  };
}

function hoseWords(compression: number, diameter: number, system: UnitSystem): string {
  const source = sourceWords(HOSE_SOURCE);
  if (compression === 0) return `pulled tight · ${source}`;
  const factor = hoseCompressionFactor(compression, diameter);
  return `friction × ${formatQuantity('coefficient', system, factor).text} · ${source}`;
}
