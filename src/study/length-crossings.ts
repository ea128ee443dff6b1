// Lengthens one section of a network step by step and finds every length at which a flow passes a
// threshold: what a machine needs, what keeps a pipe clean, where the collector's points end.
// A speed limit in a pipe is such a threshold too, being a flow once the pipe is chosen.
//
// Nothing is taken to be monotone. A collector whose curve has a hump may fall to another operating
// point at some length, a momentum wye may pump. So the range is scanned, each change of sign between
// two lengths is bracketed, and where the slopes tell that a flow draws near its threshold and leaves
// it again between two lengths, the nearest approach is looked at as well: it may hold two crossings.

import type { CollectorCurve } from '../curve/collector-curve.ts';
import { findCrossings } from '../solve/balance.ts';
import type { Network } from '../solve/network.ts';
import type { Workspace } from '../solve/workspace.ts';
import { LENGTH_TOLERANCE, lengthRoots, type Reading } from './length-roots.ts';
import type { Study } from './progress.ts';

/** Parts that the range is scanned in. */
export const SCAN_PARTS = 64;
/** Part of a scanned part over which slopes are taken [-]. */
const SLOPE_PART = 1e-3;
/** A flow this far from its threshold on one side of a crossing has jumped [-]. */
const JUMP = 1e-3;

/** A network, one section of which can be lengthened. */
export interface Lengthening {
  /** The network without any length added; a copy is lengthened, this one stays. */
  readonly network: Network;
  /** Place of the section to be lengthened, in the network's order [-]. */
  readonly section: number;
  /** What a metre of it multiplies the friction factor by [1/m]. */
  readonly perLength: number;
  /** Loss coefficient of the gate in each section, in the network's order [-], (sections). */
  readonly gate: Float64Array;
  readonly curve: CollectorCurve;
}

/** A flow in a section that is of interest. */
export interface Threshold {
  /** Place of the section in the network's order [-]. */
  readonly section: number;
  /** The flow, above 0 [m³/s]. */
  readonly flow: number;
}

/** A length at which a flow passes a threshold. */
export interface LengthCrossing {
  /** Which of the thresholds [-]. */
  readonly threshold: number;
  /** The added length [m]. */
  readonly length: number;
  /** Whether the flow is below the threshold before it and above it after. */
  readonly rises: boolean;
  /** Whether the flow does not pass through the threshold but leaps over it. */
  readonly leaps: boolean;
}

/** One length that was looked at. */
export interface LengthPoint {
  /** The added length [m]. */
  readonly length: number;
  /** Flow in each section in the network's order [m³/s], (sections); empty without a balance. */
  readonly flow: Float64Array;
}

/** What lengthening does. */
export interface LengthResult {
  /** By rising length; those of one threshold take turns in direction. */
  readonly crossings: readonly LengthCrossing[];
  /** The lengths of the scan, evenly apart from 0 on. */
  readonly points: readonly LengthPoint[];
}

/**
 * A network lengthened by nothing yet, sharing all but the two columns that a length changes.
 * @param network - a network
 * @returns a copy with `frictional` [-] and `laminar` [Pa·s/m³] of its own
 */
export function lengthenable(network: Network): Network {
  return { ...network, frictional: network.frictional.slice(), laminar: network.laminar.slice() };
}

/**
 * Sets the length that is added to a section.
 * @param copy - what {@link lengthenable} made of the network; changed
 * @param lengthening - which section, and what a metre of it adds
 * @param length - the added length, 0 or more [m]
 */
export function lengthenTo(copy: Network, lengthening: Lengthening, length: number): void {
  const { network, section, perLength } = lengthening;
  const frictional = network.frictional[section]! + perLength * length;
  copy.frictional[section] = frictional;
  copy.laminar[section] = (64 * frictional * copy.dynamic[section]!) / copy.reynolds[section]!;
}

/**
 * Finds every added length at which a flow passes a threshold. A step of the study is one length of
 * the scan, or after that one threshold.
 * @param lengthening - the network, the section, the gates and the collector
 * @param thresholds - flows [m³/s] in sections that are of interest
 * @param longest - greatest length to look at, above 0 [m]
 * @param work - a workspace of the network, used up
 * @returns crossings to 1e-7 m, and the scan; a crossing is missed only where two of one threshold
 *   lie between the same two of the scan's lengths and the flow doesn't turn there
 * @throws RangeError when `longest` is not above 0
 */
export function* lengthCrossings(
  lengthening: Lengthening,
  thresholds: readonly Threshold[],
  longest: number,
  work: Workspace,
): Study<LengthResult> {
  if (!(longest > 0)) throw new RangeError(`the greatest length must be above 0, not ${longest}`);
  const copy = lengthenable(lengthening.network);
  const balances = (length: number) => {
    lengthenTo(copy, lengthening, length);
    return findCrossings(copy, work, lengthening.gate, lengthening.curve).length > 0;
  };
  const total = SCAN_PARTS + 1 + thresholds.length;
  const points: LengthPoint[] = [];
  const ahead: Float64Array[] = [];
  const flowAt = (length: number) => (balances(length) ? work.flow.slice() : new Float64Array(0));
  for (let k = 0; k <= SCAN_PARTS; k++) {
    const length = (longest * k) / SCAN_PARTS;
    points.push({ length, flow: flowAt(length) });
    ahead.push(flowAt(length + (SLOPE_PART * longest) / SCAN_PARTS));
    yield { done: k + 1, total };
  }
  const crossings: LengthCrossing[] = [];
  for (const [threshold, { section, flow }] of thresholds.entries()) {
    const excess = (length: number) => (balances(length) ? work.flow[section]! - flow : -flow);
    const readings = points.map((point, k): Reading => {
      const here = point.flow[section] ?? 0;
      return { length: point.length, excess: here - flow, ahead: (ahead[k]![section] ?? 0) - here };
    });
    for (const length of lengthRoots(excess, readings)) {
      crossings.push({ threshold, length, ...passage(excess, length, longest, flow) });
    }
    yield { done: SCAN_PARTS + 2 + threshold, total };
  }
  return { crossings: crossings.toSorted((a, b) => a.length - b.length), points };
}

/** In which direction a threshold is passed, and whether the flow leaps over it. */
function passage(
  excess: (length: number) => number,
  length: number,
  longest: number,
  flow: number,
): Pick<LengthCrossing, 'rises' | 'leaps'> {
  const aside = 10 * LENGTH_TOLERANCE;
  const before = excess(Math.max(0, length - aside));
  const after = excess(Math.min(longest, length + aside));
  return { rises: after >= before, leaps: Math.abs(after - before) > JUMP * flow };
}
