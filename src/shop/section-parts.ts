// What a section consists of, part by part in the order in which air passes it, each with what it
// loses on the section's own velocity pressure. The gate is named without a loss, for gates move.

import {
  type Coefficient,
  onOtherVelocityPressure,
  plainCoefficient,
} from '../duct/coefficient.ts';
import { hose } from '../duct/hose.ts';
import { changeLoss, fittingLoss } from './fitting-loss.ts';
import { hoodLoss } from './hood-loss.ts';
import { pipeWord } from './pipe-of.ts';
import type { Drop, Gate } from './schema/drop-schema.ts';
import type { Fitting } from './schema/fitting-schema.ts';
import type { Section } from './schema/section-schema.ts';

/** A part of a section. */
export type SectionPart =
  | { readonly kind: 'hood' }
  /** From a machine's port to the pipe; diameters in [m]. */
  | { readonly kind: 'port'; readonly from: number; readonly to: number }
  | { readonly kind: 'gate'; readonly gate: Gate }
  /** Straight pipe or hose, of a length and an inside diameter in [m]. */
  | { readonly kind: 'pipe' | 'hose'; readonly length: number; readonly diameter: number }
  /** A fitting, all of its count together. */
  | { readonly kind: 'fitting'; readonly fitting: Fitting };

/** A part with its loss. */
export interface PartLoss {
  readonly part: SectionPart;
  /** Loss coefficient on the section's velocity pressure; none for a gate [-] */
  readonly coefficient: Coefficient;
}

/**
 * The parts of a section.
 *
 * @param section - a section of the shop
 * @param drop - the drop that feeds it, where it is an open end
 * @param diameter - inside diameter of its pipe [m]
 * @param density - density of the air in the shop [kg/m³]
 * @returns the parts, those at the open end first
 * @throws RangeError where the hood is not in the table, or its readings contradict each other
 */
export function sectionParts(
  section: Section,
  drop: Drop | undefined,
  diameter: number,
  density: number,
): PartLoss[] {
  const { length, compression = 0, fittings } = section;
  return [
    ...(drop === undefined ? [] : entryParts(drop, diameter, density)),
    {
      part: { kind: pipeWord(section.pipe), length, diameter },
      coefficient: hose(length, diameter, compression),
    },
    ...fittings.map(
      (fitting): PartLoss => ({
        part: { kind: 'fitting', fitting },
        coefficient: fittingLoss(fitting),
      }),
    ),
  ];
}

/**
 * The entry loss of a drop's hood, on the velocity pressure in its port.
 *
 * @param drop - a drop of the shop
 * @param density - density of the air in the shop [kg/m³]
 * @returns coefficient [-]
 * @throws RangeError where the hood is not in the table, or its readings contradict each other
 */
export function entryLoss(drop: Drop, density: number): Coefficient {
  const hood = hoodLoss(drop.hood, density);
  if (hood.kind === 'found') return hood.coefficient;
  throw new RangeError(`the hood of drop ${drop.id} gives no entry loss: ${hood.kind}`);
}

/** Hood, the change from port to pipe where there is one, and the gate. */
function entryParts(drop: Drop, diameter: number, density: number): PartLoss[] {
  const { port = diameter, gate } = drop;
  const parts: PartLoss[] = [
    {
      part: { kind: 'hood' },
      coefficient: onOtherVelocityPressure(entryLoss(drop, density), port, diameter),
    },
  ];
  if (port !== diameter || drop.transition !== undefined) {
    parts.push({
      part: { kind: 'port', from: port, to: diameter },
      coefficient: changeLoss(port, diameter, drop.transition, diameter),
    });
  }
  if (gate) parts.push({ part: { kind: 'gate', gate }, coefficient: plainCoefficient(0) });
  return parts;
}
