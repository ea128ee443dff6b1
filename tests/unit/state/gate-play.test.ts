import { describe, expect, it } from 'vitest';
import { gatePlay } from '../../../src/state/gate-play.ts';

const drops = [
  { id: 'saw', name: 'Saw', gate: { travel: 1 } },
  { id: 'hood', name: 'Hood' },
  { id: 'lathe', name: 'Lathe', gate: { travel: 0.5 } },
];

describe('the play of the gates', () => {
  const stops = gatePlay(drops, 'lathe');

  it('opens one drop after another, each as far as its document says', () => {
    expect(stops.slice(0, 3).map(({ gates }) => Object.fromEntries(gates))).toEqual([
      {},
      { saw: 1 },
      { saw: 1, lathe: 0.5 },
    ]);
  });

  it('then draws one gate slowly from shut to open, all others shut', () => {
    const drawn = stops.filter(({ kind }) => kind === 'draw');
    expect(drawn.map(({ gates }) => Object.fromEntries(gates))).toEqual([
      { lathe: 0.25 },
      { lathe: 0.5 },
      { lathe: 0.75 },
      { lathe: 1 },
    ]);
    expect(stops.at(-5)?.gates.size).toBe(0);
    expect(stops.at(-1)?.words).toBe('Lathe alone, all the way out');
  });

  it('draws the first gate where none was named, or one without a gate', () => {
    for (const slow of [undefined, 'hood', 'gone']) {
      expect(gatePlay(drops, slow).at(-1)?.gates.get('saw')).toBe(1);
    }
  });

  it('has nothing to play where no drop has a gate', () => {
    expect(gatePlay([{ id: 'hood', name: 'Hood' }], undefined)).toEqual([]);
  });
});
