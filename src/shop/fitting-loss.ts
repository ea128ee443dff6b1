// Fittings and changes of diameter of the document, in the form that the solver takes. Here degrees
// become radians.

import { areaChange, USUAL_TAPER } from '../duct/area-change.ts';
import {
  type Coefficient,
  onOtherVelocityPressure,
  plainCoefficient,
  timesCoefficient,
} from '../duct/coefficient.ts';
import { goredElbow } from '../duct/gored-elbow.ts';
import { mitreBend } from '../duct/mitre-bend.ts';
import { smoothBend } from '../duct/smooth-bend.ts';
import type { Fitting } from './schema/fitting-schema.ts';
import type { Transition } from './schema/section-schema.ts';

/**
 * Degrees as radians.
 *
 * @param degrees - an angle as the document holds it [deg]
 * @returns the angle [rad]
 */
export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/**
 * What a fitting of the document loses, all of its count together. A coefficient in the document
 * comes before the computed one.
 *
 * @param fitting - a fitting of a section
 * @returns coefficient on the section's velocity pressure [-]
 */
export function fittingLoss(fitting: Fitting): Coefficient {
  return timesCoefficient(oneFitting(fitting), fitting.count ?? 1);
}

function oneFitting(fitting: Fitting): Coefficient {
  const given = fitting.coefficient;
  if (given !== undefined) return plainCoefficient(given);
  if (fitting.kind === 'plain') return plainCoefficient(fitting.coefficient);
  const angle = radians(fitting.angle);
  if (fitting.kind === 'bend') return smoothBend(angle, fitting.radius);
  if (fitting.kind === 'mitre') return mitreBend(angle);
  return goredElbow(fitting.pieces, fitting.radius, angle);
}

/**
 * What a change of diameter loses, restated on the velocity pressure of a pipe that is named.
 *
 * @param from - inside diameter the air comes from [m]
 * @param to - inside diameter the air goes to [m]
 * @param transition - how it changes; a cone of 30 degrees if nothing is said
 * @param on - inside diameter of the pipe whose velocity pressure is meant [m]
 * @returns coefficient on that velocity pressure [-]
 */
export function changeLoss(
  from: number,
  to: number,
  transition: Transition | undefined,
  on: number,
): Coefficient {
  const change = areaChange(from, to, inRadians(transition));
  return onOtherVelocityPressure(change, Math.min(from, to), on);
}

function inRadians(transition: Transition | undefined): Transition {
  if (transition === undefined) return USUAL_TAPER;
  if (transition.kind !== 'taper') return transition;
  return { kind: 'taper', angle: radians(transition.angle) };
}
