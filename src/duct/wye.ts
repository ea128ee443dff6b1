// Streams that join: what each inlet of a wye loses, and may gain, by meeting the others.
// The law is a momentum balance along the outlet, for any number of inlets of any diameter.
//
// 1. I. E. Idelchik, Handbook of Hydraulic Resistance, ch. 7, and Crane TP-410, example 7-35: the
//    same coefficient for the straight run of a constant main, 1 − (1−q)² − 2·q²·(A_c/A_b)·cos α.
// 2. Here each stream also keeps its own velocity pressure, so that energy is never created:
//    Σ q_j·K_j = Σ q_j·[(1 − v_j)² + 2·v_j·(1 − cos α_j)] with v_j = q_j·A_c/A_j.

/** How an inlet meets the others. The angle is from the outlet's direction, 0 for the run [rad]. */
export type Join =
  | { readonly kind: 'momentum'; readonly angle: number }
  | { readonly kind: 'fixed'; readonly coefficient: number; readonly of: 'own' | 'combined' };

/**
 * What an inlet loses, ready for a solver: own·Q_j² + combined·Q_c² + Σ_k cross_k·Q_k², with the
 * sum over all inlets of the wye that join by momentum. Each in [Pa·s²/m⁶].
 */
export interface WyeTerms {
  /** On the square of this inlet's flow [Pa·s²/m⁶] */
  readonly own: number;
  /** On the square of the combined flow [Pa·s²/m⁶] */
  readonly combined: number;
  /** What the square of this inlet's flow adds to the loss of every momentum inlet [Pa·s²/m⁶] */
  readonly cross: number;
}

/**
 * The loss of one inlet as factors on squared flows. A fixed join has no cross term, neither its
 * own nor others': a wye's inlets are to be all of one kind.
 *
 * @param join - momentum with its angle [rad], or a fixed coefficient [-] on a named stream
 * @param inletArea - inside area of this inlet, above 0 [m²]
 * @param combinedArea - inside area of the outlet, above 0 [m²]
 * @param density - density of the air, above 0 [kg/m³]
 * @returns the three factors [Pa·s²/m⁶]
 * @throws RangeError if an area or the density is not above 0, or an angle is outside 0 to π/2
 * @example
 * wyeTerms({ kind: 'momentum', angle: 0 }, 1, 1, 2).own; // => 1
 * wyeTerms({ kind: 'momentum', angle: 0 }, 1, 1, 2).combined; // => 1
 * wyeTerms({ kind: 'momentum', angle: 0 }, 1, 1, 2).cross; // => -2
 */
export function wyeTerms(
  join: Join,
  inletArea: number,
  combinedArea: number,
  density: number,
): WyeTerms {
  if (!(inletArea > 0)) throw new RangeError(`area must be above 0, not ${inletArea}`);
  if (!(combinedArea > 0)) throw new RangeError(`area must be above 0, not ${combinedArea}`);
  if (!(density > 0)) throw new RangeError(`density must be above 0, not ${density}`);
  const onOwn = (0.5 * density) / inletArea ** 2;
  const onCombined = (0.5 * density) / combinedArea ** 2;
  if (join.kind === 'momentum') {
    checkAngle(join.angle);
    const cross = (-density * Math.cos(join.angle)) / (inletArea * combinedArea);
    return { own: onOwn, combined: onCombined, cross };
  }
  return join.of === 'own'
    ? { own: join.coefficient * onOwn, combined: 0, cross: 0 }
    : { own: 0, combined: join.coefficient * onCombined, cross: 0 };
}

/** One inlet of a momentum wye, for a look at its coefficient. */
export interface WyeInlet {
  /** Flow in this inlet, 0 or more [m³/s] */
  readonly flow: number;
  /** Its inside area [m²] */
  readonly area: number;
  /** Its angle from the outlet's direction, 0 for the straight run [rad] */
  readonly angle: number;
}

/**
 * Loss coefficients of all inlets of a momentum wye, on the velocity pressure of the combined
 * stream: K_j = 1 + (q_j·A_c/A_j)² − 2·Σ_k (A_c/A_k)·q_k²·cos α_k. The sign is kept: one stream can
 * pump the other. Weighted by flow they never add up to less than zero.
 *
 * @param inlets - flows [m³/s], areas [m²] and angles [rad], in any order
 * @param combinedArea - inside area of the outlet, above 0 [m²]
 * @returns one coefficient an inlet, in the same order [-]
 * @throws RangeError if an area is not above 0, an angle is outside 0 to π/2, or nothing flows
 * @example
 * momentumWyeK([{ flow: 1, area: 2, angle: 0 }, { flow: 1, area: 2, angle: 0 }], 4)[0]; // => 0
 */
export function momentumWyeK(inlets: readonly WyeInlet[], combinedArea: number): number[] {
  if (!(combinedArea > 0)) throw new RangeError(`area must be above 0, not ${combinedArea}`);
  const total = inlets.reduce((sum, inlet) => sum + inlet.flow, 0);
  if (!(total > 0)) throw new RangeError(`the combined flow must be above 0, not ${total}`);
  let momentum = 0;
  for (const { flow, area, angle } of inlets) {
    if (!(area > 0)) throw new RangeError(`area must be above 0, not ${area}`);
    checkAngle(angle);
    momentum += 2 * (combinedArea / area) * (flow / total) ** 2 * Math.cos(angle);
  }
  return inlets.map(
    ({ flow, area }) => 1 + ((flow / total) * (combinedArea / area)) ** 2 - momentum,
  );
}

function checkAngle(angle: number): void {
  if (!(angle >= 0 && angle <= Math.PI / 2)) {
    throw new RangeError(`a wye's angle must be from 0 to π/2, not ${angle}`);
  }
}
