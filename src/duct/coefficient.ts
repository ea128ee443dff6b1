// One form for every fitting: K = fixed + frictional·f, on a velocity pressure that is stated.
// A section is then a single sum, loss = (fixed + frictional·f)·VP, with loss and slope in flow.

import type { Air } from '../air/air.ts';
import type { FrictionLaw } from './friction-law.ts';

/** A loss coefficient that may lean on the friction factor f of the pipe it sits in. */
export interface Coefficient {
  /** The part that no friction law changes [-] */
  readonly fixed: number;
  /** What multiplies the Darcy friction factor; for a straight pipe its L/D [-] */
  readonly frictional: number;
}

/** Pressure lost at a flow, and how it changes with the flow. */
export interface LossAndSlope {
  /** Total pressure lost [Pa] */
  readonly loss: number;
  /** Its derivative with respect to flow [Pa·s/m³] */
  readonly slope: number;
}

/**
 * A coefficient that no friction changes.
 *
 * @param value - loss coefficient K [-]
 * @returns the same in the common form [-]
 * @example
 * plainCoefficient(0.35).fixed; // => 0.35
 */
export function plainCoefficient(value: number): Coefficient {
  return { fixed: value, frictional: 0 };
}

/**
 * What several fittings in one section come to. All must refer to the same velocity pressure.
 *
 * @param coefficients - any number of coefficients, none gives zero [-]
 * @returns their sum [-]
 * @example
 * sumOfCoefficients([{ fixed: 0.33, frictional: 0 }, { fixed: 0, frictional: 40 }]).frictional; // => 40
 */
export function sumOfCoefficients(coefficients: readonly Coefficient[]): Coefficient {
  let fixed = 0;
  let frictional = 0;
  for (const coefficient of coefficients) {
    fixed += coefficient.fixed;
    frictional += coefficient.frictional;
  }
  return { fixed, frictional };
}

/**
 * The same fitting several times over.
 *
 * @param coefficient - one fitting [-]
 * @param count - how many, 0 or more [-]
 * @returns the coefficient of all of them [-]
 * @throws RangeError if the count is negative or no number
 * @example
 * timesCoefficient({ fixed: 0.33, frictional: 0 }, 2).fixed; // => 0.66
 */
export function timesCoefficient(coefficient: Coefficient, count: number): Coefficient {
  if (!(count >= 0)) throw new RangeError(`count must be 0 or more, not ${count}`);
  return { fixed: coefficient.fixed * count, frictional: coefficient.frictional * count };
}

/**
 * A coefficient stated on one pipe's velocity pressure, restated on another's, so that the loss in
 * pascal stays the same at the same flow: K·(to/from)⁴.
 *
 * @param coefficient - without a frictional part, for f belongs to the pipe it is in [-]
 * @param fromDiameter - inside diameter that the coefficient is stated on, above 0 [m]
 * @param toDiameter - inside diameter that it shall be stated on, above 0 [m]
 * @returns coefficient on the other velocity pressure [-]
 * @throws RangeError if a diameter is not above 0 or the coefficient has a frictional part
 * @example
 * onOtherVelocityPressure({ fixed: 1, frictional: 0 }, 0.1, 0.2).fixed; // => 16
 */
export function onOtherVelocityPressure(
  coefficient: Coefficient,
  fromDiameter: number,
  toDiameter: number,
): Coefficient {
  if (!(fromDiameter > 0)) throw new RangeError(`diameter must be above 0, not ${fromDiameter}`);
  if (!(toDiameter > 0)) throw new RangeError(`diameter must be above 0, not ${toDiameter}`);
  if (coefficient.frictional !== 0) {
    throw new RangeError(`a frictional part stays in its pipe, here ${coefficient.frictional}`);
  }
  return plainCoefficient(coefficient.fixed * (toDiameter / fromDiameter) ** 4);
}

/**
 * Loss and slope against flow of one coefficient in one pipe. Odd in flow, and smooth through zero,
 * where laminar friction leaves a slope of its own.
 *
 * @param coefficient - what is lost, on this pipe's velocity pressure [-]
 * @param diameter - inside diameter, above 0 [m]
 * @param roughness - absolute wall roughness, 0 or more [m]
 * @param air - density [kg/m³] and viscosity [Pa·s]
 * @param law - the law of friction
 * @returns a function of flow [m³/s] to loss [Pa] and slope [Pa·s/m³]
 * @throws RangeError if the diameter is not above 0 or the roughness is below 0
 */
export function elementLoss(
  coefficient: Coefficient,
  diameter: number,
  roughness: number,
  air: Air,
  law: FrictionLaw,
): (flow: number) => LossAndSlope {
  if (!(diameter > 0)) throw new RangeError(`diameter must be above 0, not ${diameter}`);
  if (!(roughness >= 0)) throw new RangeError(`roughness must be 0 or more, not ${roughness}`);
  const area = (Math.PI / 4) * diameter * diameter;
  const reynoldsPerFlow = (air.density * diameter) / (air.viscosity * area);
  const pressurePerFlowSquared = (0.5 * air.density) / (area * area);
  const { fixed, frictional } = coefficient;

  return (flow) => {
    const size = Math.abs(flow);
    const reynolds = reynoldsPerFlow * size;
    if (reynolds === 0) {
      return { loss: 0, slope: (64 / reynoldsPerFlow) * frictional * pressurePerFlowSquared };
    }
    const total = fixed + frictional * law.factor(reynolds, roughness / diameter);
    const rise = frictional * law.slope(reynolds, roughness / diameter) * reynolds;
    return {
      loss: total * pressurePerFlowSquared * flow * size,
      slope: (2 * total + rise) * pressurePerFlowSquared * size,
    };
  };
}
