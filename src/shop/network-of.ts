// From the ducts of a shop to the flat network that the solver balances, and back: the same
// positions as in the document, and for each drop what a report needs to know of it.

import type { Air } from '../air/air.ts';
import { colebrook } from '../duct/colebrook.ts';
import { gateCoefficient } from '../duct/blast-gate.ts';
import type { FrictionLaw } from '../duct/friction-law.ts';
import type { Join } from '../duct/wye.ts';
import { buildNetwork, type Network } from '../solve/network.ts';
import { radians } from './fitting-loss.ts';
import { flowNeeded } from './machine-flow.ts';
import type { Drop, Gate } from './schema/drop-schema.ts';
import type { SectionJoin } from './schema/section-schema.ts';
import type { Shop } from './schema/shop-schema.ts';
import { type SectionLosses, sectionLosses } from './section-losses.ts';
import { entryLoss } from './section-parts.ts';
import { type SectionTree, sectionTree, wayToCollector } from './section-tree.ts';

/** A drop as a report needs it. */
export interface DropNumbers {
  readonly id: string;
  readonly name: string;
  readonly gate: Gate | undefined;
  /** Positions of the sections its air passes, its own first. */
  readonly way: readonly number[];
  /** Entry loss of the hood, on the velocity pressure in the port [-] */
  readonly entryLoss: number;
  /** Inside diameter of the port [m] */
  readonly port: number;
  /** Flow that catches the dust [m³/s], if anybody said */
  readonly need: number | undefined;
}

/** The ducts of a shop, ready to be balanced. Every list is in the order of the document. */
export interface ShopNetwork {
  readonly network: Network;
  readonly tree: SectionTree;
  readonly sections: readonly SectionLosses[];
  readonly drops: readonly DropNumbers[];
}

/**
 * The network of a shop's ducts.
 *
 * @param shop - sections and drops of a shop in order
 * @param air - the air in the shop
 * @param law - friction law; Colebrook–White unless another is to be compared
 * @returns the network and what belongs to its positions
 * @throws RangeError where the shop is not in order
 */
export function networkOf(
  shop: Pick<Shop, 'sections' | 'drops'>,
  air: Air,
  law: FrictionLaw = colebrook,
): ShopNetwork {
  const tree = sectionTree(shop);
  const sections = sectionLosses(shop, tree, air.density);
  const network = buildNetwork(
    sections.map(({ pipe, run, change }, i) => ({
      into: tree.into[i]!,
      diameter: pipe.diameter,
      roughness: pipe.roughness,
      frictional: run.frictional,
      fixed: run.fixed + change,
      join: joinOf(shop.sections[i]?.join),
    })),
    air,
    law,
  );
  const drops = shop.drops.map((drop) => dropNumbers(drop, tree, sections, air.density));
  return { network, tree, sections, drops };
}

/**
 * The gate of every section at given travels, as the solver takes it.
 *
 * @param ducts - the ducts of a shop
 * @param travels - travel of each drop's gate, in the order of the drops; no gate, no matter [-]
 * @returns loss coefficient on each section's velocity pressure, 0 where no gate is [-], (sections)
 */
export function gateCoefficients(ducts: ShopNetwork, travels: readonly number[]): Float64Array {
  const gates = new Float64Array(ducts.sections.length);
  ducts.drops.forEach(({ gate, way }, i) => {
    if (gate === undefined) return;
    gates[way[0]!] = gateCoefficient(travels[i]!, gate.leak, gate.slotLoss);
  });
  return gates;
}

function dropNumbers(
  drop: Drop,
  tree: SectionTree,
  sections: readonly SectionLosses[],
  density: number,
): DropNumbers {
  const section = tree.position.get(drop.into);
  if (section === undefined) throw new RangeError(`drop ${drop.id} feeds no section`);
  return {
    id: drop.id,
    name: drop.name,
    gate: drop.gate,
    way: wayToCollector(tree, section),
    entryLoss: entryLoss(drop, density).fixed,
    port: drop.port ?? sections[section]!.pipe.diameter,
    need: flowNeeded(drop),
  };
}

/** Where there is no wye the join has no effect; the straight run stands in. */
function joinOf(join: SectionJoin | undefined): Join {
  if (join === undefined) return { kind: 'momentum', angle: 0 };
  return join.kind === 'momentum' ? { kind: 'momentum', angle: radians(join.angle) } : join;
}
