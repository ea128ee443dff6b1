// Where the suction goes: what each part on a drop's way to the collector loses in one state of the
// gates, and the pressures after it. Begins in the room, ends at the flange. Along the way the losses
// of a section's parts add up to the loss of the section, and all of them to the suction at the flange.

import { velocityPressure } from '../air/velocity-pressure.ts';
import { gateCoefficient } from '../duct/blast-gate.ts';
import { elementLoss, plainCoefficient } from '../duct/coefficient.ts';
import type { Shop } from './schema/shop-schema.ts';
import { type SectionPart, sectionParts } from './section-parts.ts';
import type { ShopModel } from './shop-model.ts';
import type { StateReport } from './state-report.ts';

/** What a step along the way is made of. */
export type PathPart =
  | Exclude<SectionPart, { readonly kind: 'gate' }>
  /** Travel of the blade, 0 shut to 1 drawn right out [-] */
  | { readonly kind: 'gate'; readonly travel: number }
  /** A change of diameter between two sections; diameters in [m]. */
  | { readonly kind: 'change'; readonly from: number; readonly to: number }
  /** The wye that a section empties through, into the section of the id. */
  | { readonly kind: 'wye'; readonly into: string };

/** One part on the way. Pressures are relative to the room, negative under suction. */
export interface PathStep {
  /** Id of the section it belongs to. */
  readonly section: string;
  readonly part: PathPart;
  /** Total pressure lost in it; negative where a wye pumps [Pa] */
  readonly loss: number;
  /** Total pressure after it [Pa] */
  readonly totalPressure: number;
  /** What a tap in the wall would show after it [Pa] */
  readonly staticPressure: number;
}

/**
 * The parts on a drop's way to the collector.
 *
 * @param shop - the shop that was balanced
 * @param model - the same, ready to be balanced
 * @param report - one state of its gates
 * @param id - the drop
 * @returns the parts in the order in which air passes them; none where nothing moves
 * @throws RangeError where the shop has no such drop
 */
export function pathLosses(
  shop: Pick<Shop, 'sections' | 'drops'>,
  model: ShopModel,
  report: StateReport,
  id: string,
): PathStep[] {
  const place = shop.drops.findIndex((drop) => drop.id === id);
  const drop = shop.drops[place];
  if (drop === undefined) throw new RangeError(`nothing there is a drop of the id ${id}`);
  if (report.operatingPoint === null) return [];

  const { travel } = report.drops[place]!;
  const steps: PathStep[] = [];
  let totalPressure = 0;
  const pass = (section: string, part: PathPart, loss: number, flow: number, diameter: number) => {
    totalPressure -= loss;
    const speed = flow / ((Math.PI / 4) * diameter ** 2);
    const staticPressure = totalPressure - velocityPressure(model.air.density, speed);
    steps.push({ section, part, loss, totalPressure, staticPressure });
  };
  for (const at of model.ducts.drops[place]!.way) {
    const section = shop.sections[at]!;
    const { flow, joinLoss } = report.sections[at]!;
    const { pipe } = model.ducts.sections[at]!;
    const feeder = section.id === drop.into ? drop : undefined;
    for (const { part, coefficient } of sectionParts(
      section,
      feeder,
      pipe.diameter,
      model.air.density,
    )) {
      const { gate } = part.kind === 'gate' ? part : {};
      const lost = gate
        ? plainCoefficient(gateCoefficient(travel, gate.leak, gate.slotLoss))
        : coefficient;
      const after = part.kind === 'hood' ? (drop.port ?? pipe.diameter) : pipe.diameter;
      const { loss } = elementLoss(
        lost,
        pipe.diameter,
        pipe.roughness,
        model.air,
        model.ducts.network.friction.law,
      )(flow);
      pass(section.id, part.kind === 'gate' ? { kind: 'gate', travel } : part, loss, flow, after);
    }
    const into = model.ducts.tree.into[at]!;
    const next = shop.sections[into];
    if (next === undefined) continue;
    const { diameter } = model.ducts.sections[into]!.pipe;
    const part: PathPart =
      model.ducts.tree.inlets[into]!.length > 1
        ? { kind: 'wye', into: next.id }
        : { kind: 'change', from: pipe.diameter, to: diameter };
    if (part.kind === 'change' && joinLoss === 0) continue;
    pass(section.id, part, joinLoss, report.sections[into]!.flow, diameter);
  }
  return steps;
}
