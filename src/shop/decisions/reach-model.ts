// A shop with a run that can be lengthened, and everything that can give out on the way of its drop,
// as flows in sections.

import type { CollectorCurve } from '../../curve/collector-curve.ts';
import { enteredRange } from '../../curve/entered-range.ts';
import { peakFlow } from '../../curve/peak-flow.ts';
import { hoseCompressionFactor } from '../../duct/hose.ts';
import { straightPipe } from '../../duct/straight-pipe.ts';
import type { Lengthening, Threshold } from '../../study/length-crossings.ts';
import { travelsWhenOpen } from '../gate-state.ts';
import type { DropNumbers } from '../network-of.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf, type ShopModel } from '../shop-model.ts';
import { type AddedRun, addedSectionId, editOf, runDropId } from './choice.ts';
import { orderedGates } from './quick-states.ts';

/** What gives out, or comes back, at a length. */
export type LimitKind =
  /** The flow into the drop passes what it needs. */
  | 'need'
  /** The speed in a section on its way passes the low end of the carrying range. */
  | 'settles'
  /** The speed in a section on its way passes the high end. */
  | 'tight'
  /** The flow at the flange passes the first or the last entered point, or the curve's peak. */
  | 'below the points'
  | 'above the points'
  | 'left of the peak';

/** A threshold with what it means. */
export interface Condition extends Threshold {
  readonly kind: LimitKind;
  /** Id of the section, undefined where it is no matter of one. */
  readonly at: string | undefined;
  /** The condition holds while the flow is below the threshold, or above it. */
  readonly holds: 'below' | 'above';
}

/** A shop with a run at no length yet. */
export interface ReachModel {
  /** The document with the run. */
  readonly shop: Shop;
  readonly model: ShopModel;
  readonly drop: DropNumbers;
  readonly lengthening: Lengthening;
  readonly conditions: readonly Condition[];
}

/**
 * A shop with a run that can be lengthened.
 *
 * @param shop - a shop in order
 * @param run - the run that is added
 * @param open - ids of the drops that are open
 * @returns the shop with the run at no length
 * @throws RangeError where the run can't be added, with the reason
 */
export function reachModel(shop: Shop, run: AddedRun, open: readonly string[]): ReachModel {
  const id = addedSectionId(shop, run);
  const edited = editOf({ kind: 'run', run, length: 0 })(shop);
  const model = modelOf(edited);
  const { network, drops, sections } = model.ducts;
  const at = model.sectionIds.indexOf(id);
  const drop = drops.find((each) => each.id === runDropId(run.target));
  if (at < 0 || drop === undefined) {
    throw new RangeError('a drop feeds that section: branch off in its length, not at its end');
  }
  const { diameter } = sections[at]!.pipe;
  const perLength =
    straightPipe(1, diameter).frictional * hoseCompressionFactor(run.compression ?? 0, diameter);
  const lengthening = {
    network,
    section: network.order.indexOf(at),
    perLength,
    gate: orderedGates(model.ducts, travelsWhenOpen(edited.drops, open)),
    curve: model.curve,
  };
  const conditions = [...onTheWay(model, drop), ...atTheFlange(model.curve)];
  return { shop: edited, model, drop, lengthening, conditions };
}

/** What the drop needs, and both ends of the carrying range in each section on its way. */
function onTheWay(model: ShopModel, drop: DropNumbers): Condition[] {
  const { ducts, carryingRange, sectionIds } = model;
  const { order } = ducts.network;
  const { low, high } = carryingRange;
  const own = order.indexOf(drop.way[0]!);
  const need = { kind: 'need', flow: drop.need ?? 0, section: own, at: undefined } as const;
  const speeds = drop.way.flatMap((at): Condition[] => {
    const area = (Math.PI / 4) * ducts.sections[at]!.pipe.diameter ** 2;
    const place = { section: order.indexOf(at), at: sectionIds[at]! };
    return [
      { kind: 'settles', flow: low * area, holds: 'below', ...place },
      { kind: 'tight', flow: high * area, holds: 'above', ...place },
    ];
  });
  return [{ ...need, holds: 'below' } as const, ...speeds].filter(({ flow }) => flow > 0);
}

/** Where the collector's curve is not to be trusted. */
function atTheFlange(curve: CollectorCurve): Condition[] {
  const range = enteredRange(curve);
  const flange = { section: 0, at: undefined };
  const conditions: Condition[] = [
    { kind: 'left of the peak', flow: peakFlow(curve), holds: 'below', ...flange },
    { kind: 'below the points', flow: range.low, holds: 'below', ...flange },
    { kind: 'above the points', flow: range.high, holds: 'above', ...flange },
  ];
  return conditions.filter(({ flow }) => flow > 0);
}
