// Newton over the part of a network that is solved, with tabulated branches at its inlets. As in
// solve/sweep.ts, but an inlet may be a table over the head of its wye: what it draws there and the
// slope of that are then read, not solved. All inlets of a wye share a head.

import { fillSpan } from '../solve/friction-table.ts';
import type { Network } from '../solve/network.ts';
import type { Workspace } from '../solve/workspace.ts';
import { GRID_POINTS, type HeadGrid } from './head-grid.ts';

/** As in the friction table; a constant of this file costs a loop nothing, an imported one does. */
const LAMINAR_END = 2000;
const TABLE_SCALE = 1024 / LAMINAR_END;
const LAST_REYNOLDS = 3.2e7;
const PER_SPAN = Float64Array.from({ length: 32 }, (_, shift) => TABLE_SCALE / 2 ** shift);
/** As in solve/sweep.ts. */
const LEAST_SHARE = 1e-3;
const LEAST_WEIGHT = 0.01;
const LAST_POINT = GRID_POINTS - 1;

/** What a shared sweep works on. */
export interface SharedSweep {
  /** Sections that are solved, the one at the flange first. */
  readonly solved: Int32Array;
  readonly isTabulated: Uint8Array;
  /** Flow of each tabulated section in the state at hand, as cubics over the grid [m³/s]. */
  tables: readonly Float64Array[];
  /** Loss coefficient of each section's gate in the state at hand [-], shape (sections). */
  gate: Float64Array;
  readonly grid: HeadGrid;
  /** Head at which the tables of a section's inlets are read [Pa^½], shape (sections). */
  readonly heads: Float64Array;
}

/**
 * Goes from the open ends and tables to the flange and leaves suction and slope of every section that
 * is solved.
 * @param network - the network; its wyes share heads
 * @param work - flows at the open ends that are solved in, everything else out
 * @param sweep - tables, and the heads that they are read at
 */
export function sharedUp(network: Network, work: Workspace, sweep: SharedSweep): void {
  const { firstInlet, endInlet, isCoupled, own, shared, cross } = network;
  const { dynamic, reynolds, frictional, laminar, fixed } = network;
  const { row, cells } = network.friction;
  const { flow, suction, slope, head, give, level, rise } = work;
  const { solved, isTabulated, tables, gate, grid, heads } = sweep;
  const perStep = 1 / grid.step;
  for (let n = solved.length - 1; n >= 0; n--) {
    const i = solved[n]!;
    const first = firstInlet[i]!;
    const end = endInlet[i]!;
    let q = 0;
    let p = 0;
    let dp = 0;
    if (end === first) {
      q = flow[i]!;
    } else if (end === first + 1 && isTabulated[first] === 0) {
      q = flow[first]!;
      p = suction[first]!;
      dp = slope[first]!;
    } else {
      const at = heads[i]!;
      const x = at * perStep;
      const k = x < LAST_POINT ? x | 0 : LAST_POINT;
      const t = x - k;
      let gives = 0;
      let weighted = 0;
      for (let j = first; j < end; j++) {
        if (isTabulated[j] === 1) {
          const table = tables[j]!;
          const c1 = table[4 * k + 1]!;
          const c2 = table[4 * k + 2]!;
          const c3 = table[4 * k + 3]!;
          const part = table[4 * k]! + t * (c1 + t * (c2 + t * c3));
          const giveOfInlet = perStep * (c1 + t * (2 * c2 + 3 * t * c3));
          flow[j] = part;
          head[j] = at;
          give[j] = giveOfInlet;
          q += part;
          gives += giveOfInlet;
          weighted += at * giveOfInlet;
          continue;
        }
        const part = flow[j]!;
        const onOwn = own[j]! * part;
        const sum = suction[j]! + onOwn * part;
        const least = LEAST_SHARE * slope[j]! * part;
        const y = Math.sqrt(sum > least ? sum : least);
        const giveOfInlet = (2 * y) / (slope[j]! + 2 * onOwn);
        q += part;
        head[j] = y;
        give[j] = giveOfInlet;
        gives += giveOfInlet;
        weighted += y * giveOfInlet;
      }
      const dy = 1 / gives;
      const y = weighted * dy;
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
          dp += 2 * onCross * dy * give[j]!;
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
      if (cells[cell] === 0) fillSpan(network.friction, i, re);
      const perSpan = PER_SPAN[shift]!;
      const x = re * perSpan - span;
      const c1 = cells[cell + 1]!;
      const c2 = cells[cell + 2]!;
      const c3 = cells[cell + 3]!;
      const c4 = cells[cell + 4]!;
      const c5 = cells[cell + 5]!;
      const xx = x * x;
      const f = cells[cell]! + x * c1 + xx * (c2 + x * c3 + xx * (c4 + x * c5));
      const df = c1 + 2 * x * c2 + xx * (3 * c3 + 4 * x * c4 + 5 * xx * c5);
      const multiple = frictional[i]!;
      coefficient += multiple * f;
      dp += 2 * vp * coefficient + multiple * perSpan * re * vp * df;
    } else {
      p += laminar[i]! * q;
      dp += laminar[i]! + 2 * coefficient * vp;
    }
    suction[i] = p + vp * q * coefficient;
    slope[i] = dp;
  }
}

/**
 * Goes from the flange to the open ends and tables and moves every flow and head by its step.
 * @param network - the network
 * @param work - as {@link sharedUp} left it; flows are moved
 * @param sweep - its heads are moved
 * @param rootStep - step of the flow at the flange [m³/s]
 * @returns the largest step as a part of its flow, weighed as in solve/sweep.ts [-]; infinite where a
 *   head left the tables
 */
export function sharedDown(
  network: Network,
  work: Workspace,
  sweep: SharedSweep,
  rootStep: number,
): number {
  const { firstInlet, endInlet } = network;
  const { flow, suction, head, give, level, rise, step } = work;
  const { solved, isTabulated, grid, heads } = sweep;
  const rootHead = Math.sqrt(Math.abs(suction[0]!));
  const leastHead = LEAST_WEIGHT * rootHead;
  const lastHead = grid.step * LAST_POINT;
  step[0] = rootStep;
  flow[0]! += rootStep;
  let largest = (Math.abs(rootStep) * rootHead) / flow[0]!;
  for (let n = 0; n < solved.length; n++) {
    const i = solved[n]!;
    const first = firstInlet[i]!;
    const end = endInlet[i]!;
    if (end === first) continue;
    if (end === first + 1 && isTabulated[first] === 0) {
      flow[first] = flow[i]!;
      step[first] = step[i]!;
      continue;
    }
    const y = level[i]! + rise[i]! * step[i]!;
    const before = heads[i]!;
    heads[i] = y > 0.1 * before ? y : 0.1 * before;
    if (y > lastHead) largest = Number.POSITIVE_INFINITY;
    for (let j = first; j < end; j++) {
      const part = flow[j]!;
      let wanted = (y - head[j]!) * give[j]!;
      if (!(part + wanted > 0)) wanted = -0.9 * part;
      const size = Math.abs(wanted) * (head[j]! > leastHead ? head[j]! : leastHead);
      if (size > largest * (part + wanted)) largest = size / (part + wanted);
      step[j] = wanted;
      flow[j] = part + wanted;
    }
  }
  return largest / rootHead;
}
