// The friction law of this program: laminar, then a smooth bridge, then Colebrook–White.
// Factor and slope are continuous everywhere, since closed, leaking branches sit in the bridge.
//
// 1. C. F. Colebrook, J. Inst. Civil Engineers 11 (1939) 133–156: the implicit equation
//    1/√f = −2·log10(ε/(3.7·D) + 2.51/(Re·√f)).
// 2. S. E. Haaland, J. Fluids Engineering 105 (1983) 89–90: the explicit start, within 2 %.
// 3. Hagen and Poiseuille: f = 64/Re.

import type { FrictionLaw } from './friction-law.ts';

const LAMINAR_END = 2000;
const TURBULENT_START = 4000;
const TWO_OVER_LN10 = 2 / Math.LN10;

/**
 * Colebrook–White solved to rounding from Re 4000 up, 64/Re up to Re 2000, and between them the
 * cubic in Re that meets both in value and in slope. Valid for relative roughness 0 to 0.1.
 */
export const colebrook: FrictionLaw = {
  name: 'Colebrook–White',

  factor(reynolds, relativeRoughness) {
    if (reynolds <= LAMINAR_END) return 64 / reynolds;
    if (reynolds >= TURBULENT_START) return turbulentFactor(reynolds, relativeRoughness);
    return bridge(reynolds, relativeRoughness).factor;
  },

  slope(reynolds, relativeRoughness) {
    if (reynolds <= LAMINAR_END) return -64 / (reynolds * reynolds);
    if (reynolds >= TURBULENT_START) return turbulentSlope(reynolds, relativeRoughness);
    return bridge(reynolds, relativeRoughness).slope;
  },
};

function turbulentFactor(reynolds: number, relativeRoughness: number): number {
  const x = inverseRoot(reynolds, relativeRoughness);
  return 1 / (x * x);
}

/** Newton on x = 1/√f. The equation is nearly a straight line in x: the third step is rounding. */
function inverseRoot(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = -0.9 * TWO_OVER_LN10 * Math.log(6.9 / reynolds + rough ** (10 / 9));
  for (let step = 0; step < 3; step++) {
    const inner = rough + smooth * x;
    x -= (x + TWO_OVER_LN10 * Math.log(inner)) / (1 + (TWO_OVER_LN10 * smooth) / inner);
  }
  return x;
}

/** The implicit equation differentiated: dx/dRe = c·x/Re/(1 + c) with c = 2/ln10·b/(a + b·x). */
function turbulentSlope(reynolds: number, relativeRoughness: number): number {
  const x = inverseRoot(reynolds, relativeRoughness);
  const smooth = 2.51 / reynolds;
  const c = (TWO_OVER_LN10 * smooth) / (relativeRoughness / 3.7 + smooth * x);
  return (-2 * c) / ((1 + c) * x * x * reynolds);
}

function bridge(reynolds: number, relativeRoughness: number): { factor: number; slope: number } {
  const span = TURBULENT_START - LAMINAR_END;
  const t = (reynolds - LAMINAR_END) / span;
  const low = 64 / LAMINAR_END;
  const lowSlope = (-64 / LAMINAR_END ** 2) * span;
  const high = turbulentFactor(TURBULENT_START, relativeRoughness);
  const highSlope = turbulentSlope(TURBULENT_START, relativeRoughness) * span;
  const rise = high - low;
  const square = 3 * rise - 2 * lowSlope - highSlope;
  const cube = lowSlope + highSlope - 2 * rise;
  return {
    factor: low + t * (lowSlope + t * (square + t * cube)),
    slope: (lowSlope + t * (2 * square + 3 * t * cube)) / span,
  };
}
