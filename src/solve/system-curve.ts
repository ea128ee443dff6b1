// The system curve of a gate state: the suction that the ducts need at the flange, flow by flow.
// Each point is the whole network balanced at that flow, not a parabola through one of them.

import type { Network } from './network.ts';
import { inNetworkOrder } from './section-order.ts';
import { settleAtFlow } from './settle.ts';
import { createWorkspace, type Workspace } from './workspace.ts';

export interface SystemPoint {
  /** Flow at the flange [m³/s]. */
  readonly flow: number;
  /** Total suction that the ducts need there [Pa]. */
  readonly suction: number;
  /** Slope of the curve there [Pa·s/m³]. */
  readonly slope: number;
}

/**
 * Points of the system curve with their slopes, so that they can be drawn as exact cubics.
 * @param network - the network
 * @param gates - loss coefficient of each section's gate, in the order of the input [-], (sections)
 * @param flows - flows at the flange, 0 or more [m³/s], shape (any)
 * @param work - a workspace of the network to use up; a new one if none is given
 * @returns one point a flow; suction is 0 at 0 and rises throughout
 * @throws RangeError when a flow is negative or the network does not settle at one
 */
export function systemCurve(
  network: Network,
  gates: Float64Array,
  flows: readonly number[],
  work: Workspace = createWorkspace(network),
): SystemPoint[] {
  const gate = inNetworkOrder(network, gates);
  work.flow.fill(0);
  return flows.map((flow) => {
    if (!(flow >= 0)) throw new RangeError(`a flow must be 0 or more, not ${flow}`);
    // At no flow only laminar friction has a slope; a trickle shows it.
    const drawn = Math.max(flow, 1e-9);
    if (settleAtFlow(network, work, gate, drawn) < 0) {
      throw new RangeError(`the ducts did not balance at ${flow} m³/s`);
    }
    return { flow, suction: flow === 0 ? 0 : work.suction[0]!, slope: work.slope[0]! };
  });
}
