// What a balance works on. Kept from one gate state to the next it makes a warm start.

import type { Network } from './network.ts';

/** The state of a network; arrays of shape (sections) in the network's order, but for the last. */
export interface Workspace {
  /** Loss coefficient of the section's gate [-]. */
  readonly gate: Float64Array;
  /** Flow [m³/s]. */
  readonly flow: Float64Array;
  /** Total suction at the downstream end, before a wye [Pa]. */
  readonly suction: Float64Array;
  /** Slope of that suction in the section's flow [Pa·s/m³]. */
  readonly slope: Float64Array;
  /** Of an inlet: √X [Pa^½]. */
  readonly head: Float64Array;
  /** Of an inlet: flow per √X [m³/s/Pa^½]. */
  readonly give: Float64Array;
  /** Of an inlet: flow that it loses per flow below the wye [-]. */
  readonly drag: Float64Array;
  /** Of a section below a wye: √X common to the inlets [Pa^½]. */
  readonly level: Float64Array;
  /** Of a section below a wye: slope of that in the section's flow [Pa^½·s/m³]. */
  readonly rise: Float64Array;
  /** Last step of the flow [m³/s]. */
  readonly step: Float64Array;
  /** Collector's suction [Pa] and its slope [Pa·s/m³] at the flow at hand, shape (2). */
  readonly supply: Float64Array;
}

/**
 * Makes an empty workspace.
 * @param network - the network that it is for
 * @returns a workspace with all flows 0
 */
export function createWorkspace(network: Network): Workspace {
  const column = () => new Float64Array(network.count);
  return {
    gate: column(),
    flow: column(),
    suction: column(),
    slope: column(),
    head: column(),
    give: column(),
    drag: column(),
    level: column(),
    rise: column(),
    step: column(),
    supply: new Float64Array(2),
  };
}
