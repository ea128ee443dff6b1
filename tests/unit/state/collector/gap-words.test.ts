import { describe, expect, it } from 'vitest';
import { gapWords } from '../../../../src/state/collector/gap-words.ts';

describe('the gap between what was entered and what the ducts get', () => {
  it('is told correction by correction, and warns of the velocity pressure at a tap', () => {
    const terms = {
      entered: 2000,
      terms: [
        { kind: 'density', change: -200 },
        { kind: 'tap', change: -240.4 },
        { kind: 'filter', change: -0.2 },
      ],
      available: 1559.4,
    } as const;
    const words = gapWords(0.5, terms, { kind: 'tap', diameter: 0.15 }, 'metric').replace(
      /\s/g,
      ' ',
    );
    expect(words).toBe(
      'At the operating point, 1 800 m³/h, the points say 2 000 Pa of suction at a tap and the ducts get 1 559 Pa: −200 Pa for the density of the air here, −240 Pa for the velocity pressure that the tap reads on top. Taken as fan static pressure, the same numbers would promise 240 Pa too much.',
    );
  });

  it('is none where nothing is to be corrected', () => {
    const none = { entered: 2000, terms: [], available: 2000 };
    expect(gapWords(0.5, none, { kind: 'total' }, 'metric')).toMatch(/get what was entered/);
  });
});
