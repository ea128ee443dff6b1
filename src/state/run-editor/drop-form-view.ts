// One drop as its form shows it.

import { USUAL_LEAK, USUAL_SLOT_LOSS } from '../../duct/blast-gate.ts';
import { findHood } from '../../duct/hood.ts';
import { hoodLoss } from '../../shop/hood-loss.ts';
import { findMachine } from '../../shop/machine-flow.ts';
import type { Drop } from '../../shop/schema/drop-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { ShopModel } from '../../shop/shop-model.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { LEAK_SOURCE, SLOT_SOURCE } from '../assumptions/known-sources.ts';
import { type Overridable, sourceWords } from './figure-source.ts';
import { type ReducerView, reducerView } from './reducer-view.ts';

export interface DropFormView {
  readonly drop: Drop;
  /** Entry loss that follows from the hood [-] */
  readonly entryLoss: number | undefined;
  /** Where it comes from. */
  readonly hoodSource: string;
  /** Density of the air, which a reading of a hood is judged by [kg/m³] */
  readonly density: number;
  /** Inside diameter of the port; the usual one is that of the pipe [m] */
  readonly port: Overridable;
  /** Where the port is of another diameter than the pipe. */
  readonly reducer: ReducerView | undefined;
  /** Flow that catches the dust; the usual one is the guideline for the machine [m³/s] */
  readonly need: Overridable;
  /** Leak of the shut gate, over the pipe's area [-] */
  readonly leak: Overridable;
  /** Loss of the slot of the open gate [-] */
  readonly slotLoss: Overridable;
}

/**
 * A drop as its form shows it.
 *
 * @param shop - the shop
 * @param model - the shop, ready to be balanced
 * @param id - id of the drop
 * @param system - the units to speak in
 * @returns the view, or undefined if the shop has no such drop
 */
export function dropFormView(
  shop: Shop,
  model: ShopModel,
  id: string,
  system: UnitSystem,
): DropFormView | undefined {
  const drop = shop.drops.find((each) => each.id === id);
  const pipe = drop && model.ducts.sections[model.ducts.tree.position.get(drop.into) ?? -1]?.pipe;
  if (drop === undefined || pipe === undefined) return undefined;
  const loss = hoodLoss(drop.hood, model.air.density);
  const machine = drop.machine === undefined ? undefined : findMachine(drop.machine);
  return {
    drop,
    entryLoss: loss.kind === 'found' ? loss.coefficient.fixed : undefined,
    hoodSource: hoodSource(drop),
    density: model.air.density,
    port: { own: drop.port, usual: pipe.diameter, source: 'as the pipe' },
    reducer: reducerView(drop.port ?? pipe.diameter, pipe.diameter, drop.transition, system),
    need: {
      own: drop.need,
      usual: machine?.flow,
      source: machine ? sourceWords(machine.source) : '',
    },
    leak: {
      own: drop.gate?.leak,
      usual: USUAL_LEAK,
      source: `of the pipe’s area · ${sourceWords(LEAK_SOURCE)}`,
    },
    slotLoss: {
      own: drop.gate?.slotLoss,
      usual: USUAL_SLOT_LOSS,
      source: sourceWords(SLOT_SOURCE),
    },
  };
}

function hoodSource({ hood }: Drop): string {
  if (hood.kind === 'measured') return 'measured on the machine';
  const found = hood.kind === 'table' ? findHood(hood.id) : undefined;
  return found ? sourceWords(found.source) : 'entered for this shop';
}
