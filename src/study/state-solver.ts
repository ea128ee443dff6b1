// Solves every state of a study, and again with other numbers in the same places. The first time each
// state is solved in full. From then on branches that are tabulated are only read, and what is solved
// begins from a forecast: the solution of the state before, changed as it changed the first time. Two
// sweeps are then enough. Whatever does not end well, or may have another crossing, is solved in full.

import { findCrossings } from '../solve/balance.ts';
import { isOnlyCrossing } from '../solve/crossings.ts';
import { stepToCurve } from '../solve/settle.ts';
import {
  type Characteristic,
  characteristicOf,
  emptyBelowWye,
  joinInlets,
  openEnd,
} from './characteristic.ts';
import { cubicsOf, moveReading, readTable } from './head-grid.ts';
import { sharedDown, sharedUp } from './shared-sweep.ts';
import type { StatesQuestion } from './state-plan.ts';
import type { StateSolver } from './state-workspace.ts';

/** A sweep that moves no flow by more than this part is the last: the error is of its square [-]. */
const LAST_STEP = 3e-4;
const MOST_SWEEPS = 10;
const LEAST_HEAD = 1e-3;

/**
 * Begins a round: takes up its numbers and tabulates the branches that are tabulated.
 * @param solver - the solver
 * @param question - layouts, gates and collectors of the same form and number as in the first round
 */
export function beginRound(solver: StateSolver, question: StatesQuestion): void {
  const { plan, tables, sweep } = solver;
  const network = question.layouts[0]!;
  solver.question = question;
  for (const each of solver.latest) each.index = -1;
  if (solver.first.every((known) => known === undefined)) return;
  const branches: (Characteristic | undefined)[] = Array.from({ length: network.count });
  const below = emptyBelowWye();
  for (let i = network.count - 1; i > 0; i--) {
    if (plan.isTabulated[i] === 0) continue;
    const [first, end] = [network.firstInlet[i]!, network.endInlet[i]!];
    tables[i] = Array.from(plan.examples[i]!, (state) => {
      if (first === end) return openEnd(network, i, question.gates[state]![i]!, sweep.grid);
      for (let j = first; j < end; j++) branches[j] = tables[j]![plan.settings[j]![state]!];
      joinInlets(network, i, branches, sweep.grid, below);
      return characteristicOf(network, i, below, sweep.grid);
    });
    tables[i]!.forEach(({ flow }, setting) => cubicsOf(flow, solver.cubics[i]![setting]!));
  }
}

/**
 * Solves a state; layouts, then states, then curves are best taken in turn. In the first round, and
 * wherever the shared way does not end well, the whole network is solved.
 * @param solver - the solver; flows are in its workspace afterwards [m³/s]
 * @param layout - which layout [-]
 * @param state - which setting of the gates [-]
 * @param curve - which collector [-]
 * @returns whether there is an operating point
 */
export function solveState(
  solver: StateSolver,
  layout: number,
  state: number,
  curve: number,
): 'solved' | 'none' {
  const { question, first } = solver;
  const { gates, curves } = question;
  const index = (layout * gates.length + state) * curves.length + curve;
  if ((first[index]?.length ?? 0) > 0 && solveShared(solver, layout, state, curve, index)) {
    solver.count.shared += 1;
    return 'solved';
  }
  solver.count.full += 1;
  const network = question.layouts[layout]!;
  const { work, wholeWork } = solver;
  const crossings = findCrossings(network, wholeWork, gates[state]!, curves[curve]!);
  if (crossings.length === 0) {
    first[index] ??= new Float64Array(0);
    return 'none';
  }
  work.flow.set(wholeWork.flow);
  readHeads(solver);
  remember(solver, state, index);
  first[index] ??= solver.latest[state]!.values.slice();
  return 'solved';
}

function solveShared(
  solver: StateSolver,
  layout: number,
  state: number,
  curve: number,
  index: number,
): boolean {
  const { question, work, sweep } = solver;
  const network = question.layouts[layout]!;
  const collector = question.curves[curve]!;
  forecast(solver, state, index);
  sweep.gate = question.gates[state]!;
  sweep.tables = solver.flows[state]!;
  for (let sweeps = 0; sweeps < MOST_SWEEPS; sweeps++) {
    sharedUp(network, work, sweep);
    const moved = sharedDown(network, work, sweep, stepToCurve(work, collector));
    if (!(moved < Number.POSITIVE_INFINITY)) return false;
    if (moved >= LAST_STEP) continue;
    if (!isOnlyCrossing(collector, work.flow[0]!)) return false;
    remember(solver, state, index);
    follow(solver, state);
    return true;
  }
  return false;
}

/** Begins from the latest solution of the state, changed by what the first round changed it by. */
function forecast(solver: StateSolver, state: number, index: number): void {
  const { first, latest, headsAt, flowsAt, work, sweep } = solver;
  const { values, index: before } = latest[state]!;
  const wanted = first[index]!;
  const known = before < 0 ? wanted : first[before]!;
  const from = before < 0 ? wanted : values;
  const { heads } = sweep;
  const { flow } = work;
  const count = headsAt.length;
  for (let k = 0; k < count; k++) heads[headsAt[k]!] = (from[k]! * wanted[k]!) / known[k]!;
  for (let k = 0; k < flowsAt.length; k++) {
    flow[flowsAt[k]!] = (from[count + k]! * wanted[count + k]!) / known[count + k]!;
  }
}

function remember(solver: StateSolver, state: number, index: number): void {
  const { latest, headsAt, flowsAt, work, sweep } = solver;
  const entry = latest[state]!;
  const { values } = entry;
  entry.index = index;
  for (let k = 0; k < headsAt.length; k++) values[k] = sweep.heads[headsAt[k]!]!;
  for (let k = 0; k < flowsAt.length; k++) {
    values[headsAt.length + k] = work.flow[flowsAt[k]!]!;
  }
}

/** The heads at which tables would be read, from a state that was solved in full. */
function readHeads({ question, headsAt, wholeWork, sweep }: StateSolver): void {
  const { firstInlet, own } = question.layouts[0]!;
  for (const section of headsAt) {
    const inlet = firstInlet[section]!;
    const flow = wholeWork.flow[inlet]!;
    const squared = wholeWork.suction[inlet]! + own[inlet]! * flow * flow;
    sweep.heads[section] = Math.sqrt(Math.max(squared, LEAST_HEAD));
  }
}

/** Reads the flows of the tabulated sections that are followed. */
function follow(solver: StateSolver, state: number): void {
  const { followed, question, plan, work, sweep, inside, tables, reading } = solver;
  const { parent } = question.layouts[0]!;
  const { heads, grid } = sweep;
  for (const i of followed[state]!) {
    const into = parent[i]!;
    const isRoot = plan.isTabulated[into] === 0;
    moveReading(reading, isRoot ? heads[into]! / grid.step : inside[into]!);
    const { flow, inner } = tables[i]![plan.settings[i]![state]!]!;
    if (!isRoot) work.flow[i] = readTable(flow, reading, reading.weights);
    if (inner.length > 0) inside[i] = readTable(inner, reading, reading.weights);
  }
}
