// Values of sections from the order of the input to the network's own, and back.

import type { Network } from './network.ts';

/**
 * From the order of the input to the network's.
 * @param network - the network
 * @param values - one for each section of the input, in any unit [SI], shape (sections)
 * @returns the same values [SI], shape (sections)
 */
export function inNetworkOrder({ count, order }: Network, values: Float64Array): Float64Array {
  const ordered = new Float64Array(count);
  for (let place = 0; place < count; place++) ordered[place] = values[order[place]!]!;
  return ordered;
}

/**
 * From the network's order to that of the input.
 * @param network - the network
 * @param values - one for each place, in any unit [SI], shape (sections)
 * @returns the same values [SI], shape (sections)
 */
export function inInputOrder({ count, order }: Network, values: Float64Array): Float64Array {
  const ordered = new Float64Array(count);
  for (let place = 0; place < count; place++) ordered[order[place]!] = values[place]!;
  return ordered;
}
