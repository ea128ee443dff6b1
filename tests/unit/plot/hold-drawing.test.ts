import { describe, expect, it } from 'vitest';
import { holdDrawing } from '../../../src/plot/hold-drawing.ts';

const positions = [0.032, 0.135, 0.321, 0.679, 0.865, 0.968];

describe('where to hold the instrument, drawn', () => {
  it('keeps the straight stretches in proportion to the bore', () => {
    const { pipe, reading } = holdDrawing(8, 2, positions, 1);
    expect((reading - pipe.x) / pipe.bore).toBeCloseTo(8, 9);
    expect((pipe.x + pipe.length - reading) / pipe.bore).toBeCloseTo(2, 9);
  });

  it('puts every place inside the bore, at its distance from the wall', () => {
    for (const count of [1, 2, 3]) {
      const { cut, places, diameters } = holdDrawing(8, 2, positions, count);
      expect(places).toHaveLength(6 * count);
      expect(diameters).toHaveLength(count);
      places.forEach(({ x, y }, i) => {
        const fromCentre = Math.hypot(x - cut.x, y - cut.y) / (2 * cut.radius);
        expect(fromCentre).toBeCloseTo(Math.abs(0.5 - positions[i % 6]!), 9);
      });
    }
  });

  it('stays within its frame', () => {
    const { width, height, cut, pipe } = holdDrawing(8, 2, positions, 3);
    expect(cut.x + cut.radius).toBeLessThan(width);
    expect(cut.y + cut.radius).toBeLessThan(height);
    expect(cut.x - cut.radius).toBeGreaterThan(pipe.x + pipe.length);
  });
});
