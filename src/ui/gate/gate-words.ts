// How far a gate is open, as one would say it.

/**
 * Puts a gate's travel into words.
 *
 * @param travel - 0 shut to 1 drawn right out [-]
 * @returns such as "shut", "a quarter open", "62 % open" or "fully open"
 * @example
 * gateWords(0); // => 'shut'
 * gateWords(0.5); // => 'half open'
 * gateWords(0.624); // => '62 % open'
 */
export function gateWords(travel: number): string {
  if (travel <= 0) return 'shut';
  if (travel >= 1) return 'fully open';
  const percent = Math.min(99, Math.max(1, Math.round(travel * 100)));
  if (percent === 25) return 'a quarter open';
  if (percent === 50) return 'half open';
  if (percent === 75) return 'three quarters open';
  return `${percent} % open`;
}
