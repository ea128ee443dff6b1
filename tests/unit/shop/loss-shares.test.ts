// What the largest losses are called, on a way made up so that every figure is known.
import { describe, expect, it } from 'vitest';
import { lossSentence, lossShares, shareWords } from '../../../src/shop/loss-shares.ts';
import type { PathPart, PathStep } from '../../../src/shop/path-losses.ts';
import { partWords } from '../../../src/shop/path-words.ts';
import { worstOff } from '../../../src/shop/worst-off.ts';

const step = (part: PathPart, loss: number): PathStep => ({
  section: 's',
  part,
  loss,
  totalPressure: 0,
  staticPressure: 0,
});
const bend = (count: number) =>
  ({ kind: 'fitting', fitting: { kind: 'bend', angle: 90, radius: 1.5, count } }) as const;
const way = [
  step({ kind: 'hood' }, 200),
  step({ kind: 'gate', travel: 1 }, 10),
  step({ kind: 'hose', length: 1.2192, diameter: 0.1 }, 110),
  step(bend(2), 150),
  step({ kind: 'wye', into: 'm' }, 20),
  step({ kind: 'hose', length: 3.048, diameter: 0.1 }, 200),
  step(bend(1), 50),
  step({ kind: 'pipe', length: 5, diameter: 0.15 }, 260),
];

describe('the shares of a way', () => {
  it('put what is alike together, the largest first', () => {
    const shares = lossShares(way);
    expect(shares.map(({ kind, loss }) => [kind, loss])).toEqual([
      ['hose', 310],
      ['pipe', 260],
      ['hood', 200],
      ['bend', 200],
      ['wye', 20],
      ['gate', 10],
    ]);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(shareWords(shares[3]!, 'us')).toBe('3 bends');
  });

  it('name the three largest with their part of it', () => {
    expect(lossSentence('Planer', way, 'us')).toBe(
      'Planer: of 4.01\u2009in. w.g. on the way to the collector, 14\u2009ft of hose takes 31\u2009%, 16\u2009ft of pipe 26\u2009% and the hood 20\u2009%.',
    );
    expect(lossSentence('Planer', way, 'metric')).toContain('4.3\u2009m of hose takes 31\u2009%');
  });

  it('say nothing of a way on which nothing is lost', () => {
    expect(lossSentence('Planer', [], 'us')).toBe('');
    expect(lossSentence('Planer', [step({ kind: 'hood' }, 0)], 'us')).toBe('');
  });

  it('use the plural only for what is counted', () => {
    expect(lossSentence('Saw', [step(bend(2), 9)], 'us')).toContain('2 bends take 100');
    const grate = { kind: 'plain', coefficient: 1, name: 'grate', count: 2 } as const;
    expect(lossSentence('Saw', [step({ kind: 'fitting', fitting: grate }, 9)], 'us')).toContain(
      'the grate takes 100',
    );
  });
});

describe('a part in words', () => {
  it.each([
    [{ kind: 'gate', travel: 0.62 }, 'gate, 62\u2009% open'],
    [{ kind: 'gate', travel: 0 }, 'shut gate'],
    [{ kind: 'gate', travel: 1 }, 'gate'],
    [{ kind: 'port', from: 0.1016, to: 0.1524 }, 'port, 4 to 6\u2009in.'],
    [{ kind: 'change', from: 0.1524, to: 0.1016 }, 'reducer, 6 to 4\u2009in.'],
    [{ kind: 'hose', length: 3.048, diameter: 0.1016 }, '10\' 0" of 4\u2009in. hose'],
    [bend(1), 'bend of 90°'],
    [bend(2), '2 bends of 90°'],
    [{ kind: 'fitting', fitting: { kind: 'mitre', angle: 45, count: 3 } }, '3 mitres of 45°'],
    [{ kind: 'fitting', fitting: { kind: 'plain', coefficient: 1, name: 'grate' } }, 'grate'],
  ] as const)('%o', (part, words) => {
    expect(partWords(part as PathPart, 'us')).toBe(words);
  });
});

describe('the drop that is worst off', () => {
  const drop = (id: string, verdict: string, slowest: number, rest: object = {}) =>
    ({
      id,
      verdict,
      slowest: { velocity: slowest },
      velocity: slowest,
      need: null,
      ...rest,
    }) as never;

  it('is one whose chips settle, and of two the slower', () => {
    const drops = [drop('a', 'carries', 19), drop('b', 'settles', 12), drop('c', 'settles', 11)];
    expect(worstOff({ drops })?.id).toBe('c');
  });

  it('is the one shortest of its need, then the tightest, then the slowest', () => {
    const short = [
      drop('a', 'short', 20, { flow: 0.1, need: 0.2 }),
      drop('b', 'short', 20, { flow: 0.15, need: 0.2 }),
      drop('c', 'tight', 30),
    ];
    expect(worstOff({ drops: short })?.id).toBe('a');
    expect(worstOff({ drops: [drop('a', 'tight', 24), drop('b', 'tight', 30)] })?.id).toBe('b');
    expect(worstOff({ drops: [drop('a', 'carries', 21), drop('b', 'carries', 19)] })?.id).toBe('b');
  });

  it('is none where all are shut', () => {
    expect(worstOff({ drops: [drop('a', 'shut', 0)] })).toBeUndefined();
  });
});
