// Flexible hose: a pipe whose friction grows when it is not pulled tight.
//
// 1. B. Abushakra, I. S. Walker, M. H. Sherman, Compression effects on pressure loss in flexible
//    HVAC ducts, HVAC&R Research 10 (2004) 275–289: the effect, measured at 6 to 10 in. and up to
//    30 % compression. The two numbers of the fit are from memory, unverified; elsewhere than
//    measured the fit is an estimate.

import type { Coefficient } from './coefficient.ts';
import { straightPipe } from './straight-pipe.ts';

const INCH = 0.0254;
const PER_PERCENT = 0.58;
const DECAY_PER_INCH = 0.126;

/**
 * How many times the friction of a tight hose one has that is pushed together:
 * 1 + 0.58·(percent of compression)·exp(−0.126·D), D in inches.
 *
 * @param compression - part of its full length that it lacks, 0 pulled tight to 0.6 [-]
 * @param diameter - inside diameter, above 0 [m]
 * @returns factor on the friction, 1 or more, rising with compression [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * hoseCompressionFactor(0, 0.1); // => 1
 * hoseCompressionFactor(0.15, 0.1524); // => 5.085
 */
export function hoseCompressionFactor(compression: number, diameter: number): number {
  if (!(compression >= 0 && compression <= 0.6)) {
    throw new RangeError(`compression must be 0 to 0.6, not ${compression}`);
  }
  if (!(diameter > 0)) throw new RangeError(`diameter must be above 0, not ${diameter}`);
  const percent = 100 * compression;
  return 1 + PER_PERCENT * percent * Math.exp((-DECAY_PER_INCH * diameter) / INCH);
}

/**
 * A length of hose on its own velocity pressure.
 *
 * @param length - along the hose as it lies, 0 or more [m]
 * @param diameter - inside diameter, above 0 [m]
 * @param compression - part of its full length that it lacks, 0 to 0.6 [-]
 * @returns coefficient, frictional only [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * hose(2, 0.1, 0).frictional; // => 20
 */
export function hose(length: number, diameter: number, compression: number): Coefficient {
  const { fixed, frictional } = straightPipe(length, diameter);
  return { fixed, frictional: frictional * hoseCompressionFactor(compression, diameter) };
}
