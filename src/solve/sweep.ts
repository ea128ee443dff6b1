// One Newton step of a whole tree in O(sections): up from the open ends to the flange, down again.
// Duct losses grow almost with the square of the flow, so the step is taken in the square root of
// the suction at a wye, y = √X, which is almost straight in every inlet's flow. What all inlets lose
// alike, flow-dependent wyes and all, is kept out of X and added below the wye with the flows evened
// out. So where friction is constant one step from anywhere is exact. For inlet j of a wye
//     y = y_j + y_j'·δ_j + e_j·δ,     Σ(Q_j + δ_j) = Q + δ,
// which gives y and every δ_j as straight lines in the step δ of the flow below the wye. Only fixed
// coefficients on the combined flow that differ between the inlets have an e_j.

import type { Network } from './network.ts';
import type { Workspace } from './workspace.ts';

/** As in the friction table; a constant of this file costs a loop nothing, an imported one does. */
const LAMINAR_END = 2000;
const TABLE_SCALE = 1024 / LAMINAR_END;
const LAST_REYNOLDS = 3.2e7;
/** One over the width of a span, by the octave as `shift` counts it. */
const PER_SPAN = Float64Array.from({ length: 32 }, (_, shift) => TABLE_SCALE / 2 ** shift);

/** While flows are far from balanced √X may have no value; this part of what it could be stands in. */
const LEAST_SHARE = 1e-3;
/** Steps of the least of flows count by this part at least, so that these too have six digits. */
const LEAST_WEIGHT = 0.01;

/**
 * Goes from the open ends to the flange and leaves suction and slope of every section. Flows below
 * the open ends are set to the sum of what enters. One loop without a call: it is where the time
 * goes, and a call in it costs as much as a section.
 * @param network - the network
 * @param work - flows at the open ends in, everything else out
 * @param from - section to begin with, the last one or one that was returned [-]
 * @returns -1, or the section whose span of the friction table is still empty [-]; it is the one
 *   to go on from
 */
export function sweepUp(network: Network, work: Workspace, from: number): number {
  const { firstInlet, endInlet, isCoupled, isUneven, own, shared, excess, cross } = network;
  const { dynamic, reynolds, frictional, laminar, fixed } = network;
  const { row, cells } = network.friction;
  const { gate, flow, suction, slope, head, give, drag, level, rise } = work;
  for (let i = from; i >= 0; i--) {
    const first = firstInlet[i]!;
    const end = endInlet[i]!;
    let q = 0;
    let p = 0;
    let dp = 0;
    if (end === first) {
      q = flow[i]!;
    } else if (end === first + 1) {
      q = flow[first]!;
      p = suction[first]!;
      dp = slope[first]!;
    } else {
      let gives = 0;
      let drags = 0;
      let weighted = 0;
      const uneven = isUneven[i] === 1;
      let total = 0;
      if (uneven) {
        for (let j = first; j < end; j++) total += flow[j]!;
      }
      for (let j = first; j < end; j++) {
        const part = flow[j]!;
        const onOwn = own[j]! * part;
        const perHead = 2 / (slope[j]! + 2 * onOwn);
        let sum = suction[j]! + onOwn * part;
        q += part;
        if (uneven) {
          const onCombined = excess[j]! * total;
          sum += onCombined * total;
          drag[j] = onCombined * perHead;
          drags += drag[j]!;
        }
        const least = LEAST_SHARE * slope[j]! * part;
        const x = sum > least ? sum : least;
        const y = Math.sqrt(x);
        const giveOfInlet = y * perHead;
        head[j] = y;
        give[j] = giveOfInlet;
        gives += giveOfInlet;
        weighted += x * perHead;
      }
      const share = 1 / gives;
      const y = weighted * share;
      const dy = (1 + drags) * share;
      level[i] = y;
      rise[i] = dy;
      p = y * y;
      dp = 2 * y * dy;
      if (isCoupled[i] === 1) {
        const onShared = shared[i]! * q;
        p += onShared * q;
        dp += 2 * onShared;
        for (let j = first; j < end; j++) {
          const evened = flow[j]! + (y - head[j]!) * give[j]!;
          const onCross = cross[j]! * Math.abs(evened);
          p += onCross * evened;
          dp += 2 * onCross * (dy * give[j]! - drag[j]!);
        }
      }
    }
    flow[i] = q;
    const vp = dynamic[i]! * q;
    const wanted = reynolds[i]! * q;
    let coefficient = fixed[i]! + gate[i]!;
    if (wanted > LAMINAR_END) {
      const re = wanted < LAST_REYNOLDS ? wanted : LAST_REYNOLDS;
      const whole = (re * TABLE_SCALE) | 0;
      const shift = 27 - Math.clz32(whole);
      const span = whole >> shift;
      const cell = row[i]! + (((shift - 7) << 4) + span) * 6;
      const perSpan = PER_SPAN[shift]!;
      const c0 = cells[cell]!;
      if (c0 === 0) return i;
      const x = re * perSpan - span;
      const c1 = cells[cell + 1]!;
      const c2 = cells[cell + 2]!;
      const c3 = cells[cell + 3]!;
      const c4 = cells[cell + 4]!;
      const c5 = cells[cell + 5]!;
      const multiple = frictional[i]!;
      // Summed in pairs: processors take the halves side by side.
      const xx = x * x;
      const f = c0 + x * c1 + xx * (c2 + x * c3 + xx * (c4 + x * c5));
      const df = c1 + 2 * x * c2 + xx * (3 * c3 + 4 * x * c4 + 5 * xx * c5);
      coefficient += multiple * f;
      dp += 2 * vp * coefficient + multiple * perSpan * re * vp * df;
    } else {
      p += laminar[i]! * q;
      dp += laminar[i]! + 2 * coefficient * vp;
    }
    suction[i] = p + vp * q * coefficient;
    slope[i] = dp;
  }
  return -1;
}

/**
 * Goes from the flange to the open ends and moves every flow by its step. A flow that would turn
 * round is taken to a tenth of itself instead: air enters at every open end.
 * @param network - the network
 * @param work - as {@link sweepUp} left it; flows are moved
 * @param rootStep - step of the flow at the flange [m³/s]
 * @returns the largest step as a part of its flow, weighed by the root of the suction that the flow
 *   has to overcome as a part of that at the flange: what is left open is of its square [-]
 */
export function sweepDown(network: Network, work: Workspace, rootStep: number): number {
  const { firstInlet, endInlet, isUneven, count } = network;
  const { flow, suction, head, give, drag, level, rise, step } = work;
  const rootHead = Math.sqrt(Math.abs(suction[0]!));
  const leastHead = LEAST_WEIGHT * rootHead;
  step[0] = rootStep;
  flow[0]! += rootStep;
  let largest = (Math.abs(rootStep) * rootHead) / flow[0]!;
  for (let i = 0; i < count; i++) {
    const first = firstInlet[i]!;
    const end = endInlet[i]!;
    if (end === first) continue;
    if (end === first + 1) {
      flow[first] = flow[i]!;
      step[first] = step[i]!;
      continue;
    }
    const uneven = isUneven[i] === 1;
    const below = step[i]!;
    const y = level[i]! + rise[i]! * below;
    for (let j = first; j < end; j++) {
      const before = flow[j]!;
      let wanted = (y - head[j]!) * give[j]!;
      if (uneven) wanted -= drag[j]! * below;
      if (!(before + wanted > 0)) wanted = -0.9 * before;
      const size = Math.abs(wanted) * (head[j]! > leastHead ? head[j]! : leastHead);
      if (size > largest * (before + wanted)) largest = size / (before + wanted);
      step[j] = wanted;
      flow[j] = before + wanted;
    }
  }
  return largest / rootHead;
}
