import { describe, expect, it } from 'vitest';
import { usualUnits } from '../../../src/app/usual-units.ts';

describe('the units to begin with', () => {
  it.each(['en-US', 'es-PR', 'fr-CA', 'en'])('are inches for %s', (language) => {
    expect(usualUnits(language)).toBe('us');
  });

  it.each(['de-DE', 'en-GB', 'sv-SE', 'zh-Hans-CN'])('are metric for %s', (language) => {
    expect(usualUnits(language)).toBe('metric');
  });
});
