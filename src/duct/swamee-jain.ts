// The friction law of a public network solver, kept so that our solver can be held against it.
//
// 1. L. A. Rossman et al., EPANET 2.2 User Manual, EPA/600/R-20/133 (2020), "Darcy–Weisbach".
// 2. P. K. Swamee and A. K. Jain, J. Hydraulics Division ASCE 102 (1976) 657–664: from Re 4000,
//    f = 0.25/[log10(ε/(3.7·D) + 5.74/Re^0.9)]².
// 3. E. J. Dunlop (1991), as printed in 1: the cubic between Re 2000 and 4000. The engine itself
//    puts Re 4000 in both Y2 and Y3, which is what joins the cubic to Swamee–Jain without a kink.

import type { FrictionLaw } from './friction-law.ts';

const LAMINAR_END = 2000;
const TURBULENT_START = 4000;
const TWO_OVER_LN10 = 2 / Math.LN10;
const SMOOTH_AT_START = 5.74 / TURBULENT_START ** 0.9;

/** Swamee–Jain from Re 4000, 64/Re up to Re 2000, Dunlop's cubic between. */
export const swameeJain: FrictionLaw = {
  name: 'Swamee–Jain',

  factor(reynolds, relativeRoughness) {
    if (reynolds <= LAMINAR_END) return 64 / reynolds;
    if (reynolds < TURBULENT_START) return dunlop(reynolds, relativeRoughness).factor;
    const x = -TWO_OVER_LN10 * Math.log(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9);
    return 1 / (x * x);
  },

  slope(reynolds, relativeRoughness) {
    if (reynolds <= LAMINAR_END) return -64 / (reynolds * reynolds);
    if (reynolds < TURBULENT_START) return dunlop(reynolds, relativeRoughness).slope;
    const smooth = 5.74 / reynolds ** 0.9;
    const inner = relativeRoughness / 3.7 + smooth;
    const x = -TWO_OVER_LN10 * Math.log(inner);
    return (-1.8 * TWO_OVER_LN10 * smooth) / (inner * x * x * x * reynolds);
  },
};

function dunlop(reynolds: number, relativeRoughness: number): { factor: number; slope: number } {
  const y2 = relativeRoughness / 3.7 + SMOOTH_AT_START;
  const y3 = -TWO_OVER_LN10 * Math.log(y2);
  const fa = 1 / (y3 * y3);
  const fb = fa * (2 - (1.8 * TWO_OVER_LN10 * SMOOTH_AT_START) / (y2 * y3));
  const r = reynolds / LAMINAR_END;
  const x1 = 7 * fa - fb;
  const x2 = 0.128 - 17 * fa + 2.5 * fb;
  const x3 = -0.128 + 13 * fa - 2 * fb;
  const x4 = 0.032 - 3 * fa + 0.5 * fb;
  return {
    factor: x1 + r * (x2 + r * (x3 + r * x4)),
    slope: (x2 + r * (2 * x3 + 3 * r * x4)) / LAMINAR_END,
  };
}
