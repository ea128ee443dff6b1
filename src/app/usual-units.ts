// Which units a reader is likely to think in, before they say.

import type { UnitSystem } from '../units/quantity.ts';

/** Where shops measure duct in inches and air in cfm (common practice, no source). */
const INCH_REGIONS = /-(US|CA|LR|MM|PR)\b/i;

/**
 * The units to begin with.
 *
 * @param language - a language tag such as "en-US"
 * @returns US units where duct is sold in inches, and where the tag names no region
 */
export function usualUnits(language: string): UnitSystem {
  return !language.includes('-') || INCH_REGIONS.test(language) ? 'us' : 'metric';
}
