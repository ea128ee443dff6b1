// What is not known well of ducts and collector, and by how much: seven things that may each be off
// by themselves. A point of an even sequence says by how much each is off in one case.

/** Half-widths of what is doubted, as parts of each value; of walls, the part of their own range. */
export interface DoubtRanges {
  /** Entry losses of hoods [-] */
  readonly hoods: number;
  /** Bends, other fittings and changes of diameter [-] */
  readonly fittings: number;
  /** Losses in wyes [-] */
  readonly wyes: number;
  /** Losses of gates, shut ones too [-] */
  readonly gates: number;
  /** How much of the range of each wall's roughness is gone through, 0 to 1 [-] */
  readonly walls: number;
  /** Pressures of the collector's curve [-] */
  readonly curve: number;
}

/** What is doubted if nothing is said: fittings by 20 %, walls in their range, the curve by 5 %. */
export const USUAL_DOUBT: DoubtRanges = {
  hoods: 0.2,
  fittings: 0.2,
  wyes: 0.2,
  gates: 0.2,
  walls: 1,
  curve: 0.05,
};

/** Numbers in a point of the sequence [-] */
export const DOUBTS = 7;

/** By what everything is off in one case. */
export interface DoubtFactors {
  /** Factors on the losses [-] */
  readonly hoods: number;
  readonly fittings: number;
  readonly wyes: number;
  readonly gates: number;
  /** Where in their range of roughness pipes and hoses are, 0 smoothest to 1 roughest [-] */
  readonly pipeWall: number;
  readonly hoseWall: number;
  /** How much of the way there is gone from the usual roughness [-] */
  readonly walls: number;
  /** Factor on the entered pressures [-] */
  readonly curve: number;
}

/**
 * The case that a point stands for.
 * @param point - numbers from 0 to 1 [-], shape (7)
 * @param ranges - how far each may be off [-]
 * @returns the factors of the case
 * @throws RangeError where a range would allow a loss below zero, or more than all of a wall's range
 * @example
 * factorsAt([0, 0.5, 1, 0.5, 0.5, 0.5, 0.75], USUAL_DOUBT).hoods; // => 0.8
 * factorsAt([0, 0.5, 1, 0.5, 0.5, 0.5, 0.75], USUAL_DOUBT).wyes; // => 1.2
 * factorsAt([0, 0.5, 1, 0.5, 0.5, 0.5, 0.75], USUAL_DOUBT).curve; // => 1.025
 */
export function factorsAt(point: ArrayLike<number>, ranges: DoubtRanges): DoubtFactors {
  for (const [name, range] of Object.entries(ranges)) {
    if (!(range >= 0 && range <= 1)) {
      throw new RangeError(`a range of doubt is 0 to 1; that of ${name} is ${range}`);
    }
  }
  const factor = (place: number, range: number) => 1 + range * (2 * point[place]! - 1);
  return {
    hoods: factor(0, ranges.hoods),
    fittings: factor(1, ranges.fittings),
    wyes: factor(2, ranges.wyes),
    gates: factor(3, ranges.gates),
    pipeWall: point[4]!,
    hoseWall: point[5]!,
    walls: ranges.walls,
    curve: factor(6, ranges.curve),
  };
}
