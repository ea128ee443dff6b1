// The open ends of a network, each with the row of sections through which it alone reaches a wye or
// the flange. What a branch will draw at a given suction can be guessed from its resistance.

/** Arrays of shape (open ends). */
export interface Branches {
  /** The section that is open to the room. */
  readonly end: Int32Array;
  /** The last section of its row, the one that empties into a wye or the collector. */
  readonly last: Int32Array;
  /** Loss over the square of the flow along the row at a usual friction, the gate left out
   * [Pa·s²/m⁶]. */
  readonly resistance: Float64Array;
}

/** Friction factor of a first guess, and the least coefficient, so that no guess is endless [-]. */
const USUAL_FRICTION = 0.02;
const LEAST_COEFFICIENT = 0.01;

/** What of a network the branches are read from. */
interface Tree {
  readonly parent: Int32Array;
  readonly firstInlet: Int32Array;
  readonly endInlet: Int32Array;
  readonly fixed: Float64Array;
  readonly frictional: Float64Array;
  readonly dynamic: Float64Array;
}

/**
 * The branches of a tree.
 * @param tree - its arrays, in the network's order
 * @returns one branch for each open end, in the order of the network
 */
export function branchesOf(tree: Tree): Branches {
  const { parent, firstInlet, endInlet, fixed, frictional, dynamic } = tree;
  const inlets = (section: number) => endInlet[section]! - firstInlet[section]!;
  const end = Int32Array.from([...parent.keys()].filter((section) => inlets(section) === 0));
  const resistance = Float64Array.from(end, (open) => LEAST_COEFFICIENT * dynamic[open]!);
  const last = end.map((open, branch) => {
    let section = open;
    for (;;) {
      const coefficient = fixed[section]! + USUAL_FRICTION * frictional[section]!;
      resistance[branch]! += coefficient * dynamic[section]!;
      const into = parent[section]!;
      if (into < 0 || inlets(into) > 1) return section;
      section = into;
    }
  });
  return { end, last, resistance };
}
