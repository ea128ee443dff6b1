import { describe, expect, it } from 'vitest';
import { sentence } from '../../../src/shop/sentence.ts';
import type { DropReport, StateReport } from '../../../src/shop/state-report.ts';
import { verdictWords } from '../../../src/shop/verdict-words.ts';

const CFM = 4.719474432e-4;
const FPM = 0.00508;

const shop = {
  carryingRange: { low: 3500 * FPM, high: 4500 * FPM },
  sections: [
    { id: 'main', name: 'main by the door', into: 'collector' },
    { id: 's', name: 'Ast Süd', into: 'main' },
    { id: 'h', into: 'main', pipe: { kind: 'catalogue', family: 'hose-wire-helix', size: '4in' } },
  ].map((section) => ({
    pipe: { kind: 'custom' as const, diameter: 0.1, roughness: 0 },
    length: 1,
    fittings: [],
    ...section,
  })) as never,
  drops: [
    { id: 'planer', name: 'Planer', into: 's' },
    { id: 'saw', name: 'Band saw', into: 'h' },
    { id: 'lathe', name: 'Lathe', into: 's' },
    { id: 'sander', name: 'Sander', into: 's' },
  ] as never,
};

const drop = (id: string, changes: Partial<DropReport> = {}): DropReport => ({
  id,
  name: 'name when it was solved',
  travel: 1,
  flow: 742 * CFM,
  velocity: 4050 * FPM,
  hoodStaticPressure: 500,
  need: null,
  verdict: 'carries',
  slowest: { section: 's', velocity: 4050 * FPM },
  ...changes,
});

const state = (
  drops: readonly DropReport[],
  difficulties: readonly string[] = [],
): StateReport => ({
  open: drops.map(({ id }) => id),
  outcome: difficulties[0] ?? 'balanced',
  difficulties,
  operatingPoint: { flow: 1500 * CFM, suction: 1, produced: 1, stable: true, withinPoints: true },
  crossings: [],
  drops,
  sections: [],
  residual: 0,
});

const plain = (text: string) => text.replace(/[\u2009\u202f]/g, ' ');
const said = (drops: readonly DropReport[], difficulties?: readonly string[]) =>
  plain(sentence(shop, state(drops, difficulties), 'us'));

const settles = (id: string, section: string, speed: number) =>
  drop(id, { verdict: 'settles', slowest: { section, velocity: speed * FPM } });

describe('a main that throttles', () => {
  const withSections = (speeds: Record<string, number>) => ({
    ...state([drop('planer'), drop('saw')]),
    sections: Object.entries(speeds).map(([id, speed]) => ({
      id,
      flow: 0,
      velocity: speed * FPM,
      loss: 0,
      joinLoss: 0,
      staticPressure: 0,
      totalPressure: 0,
    })),
  });

  it('is named with its speed, since every open drop pays for it', () => {
    expect(plain(sentence(shop, withSections({ main: 5910, s: 4050, h: 4050 }), 'us'))).toBe(
      'Planer and Band saw open: 742 and 742 cfm. ' +
        'The main by the door is tight at 5,910 ft/min: it throttles the collector.',
    );
  });

  it('is left to the drop where the pipe is its own', () => {
    const own = plain(sentence(shop, withSections({ main: 4000, s: 5000, h: 4050 }), 'us'));
    expect(own).not.toContain('throttles');
  });
});

describe('the sentence on one open drop', () => {
  it('is short when all is well', () => {
    expect(said([drop('planer')])).toBe(
      'Planer open: 742 cfm at 4,050 ft/min; carries everywhere.',
    );
  });

  it('speaks in metric units too', () => {
    expect(plain(sentence(shop, state([drop('planer')]), 'metric'))).toBe(
      'Planer open: 1 261 m³/h at 20.6 m/s; carries everywhere.',
    );
  });

  it('says where chips will settle', () => {
    expect(said([settles('planer', 'main', 2310)])).toBe(
      'Planer open: 742 cfm at 4,050 ft/min. ' +
        'The main by the door runs at 2,310 ft/min: chips will settle there.',
    );
    expect(said([settles('planer', 's', 2310)])).toContain('Ast Süd runs at');
    expect(said([settles('planer', 'h', 2310)])).toContain('Section h runs at');
  });

  it('does not give the limit itself as a speed that is too low', () => {
    expect(said([settles('planer', 'main', 3499.9)])).toContain('just under 3,500 ft/min');
  });

  it('says what is missing and what throttles', () => {
    expect(said([drop('planer', { need: 800 * CFM, verdict: 'short' })])).toContain(
      '. That is short of the 800 cfm it needs.',
    );
    expect(said([drop('planer', { velocity: 6200 * FPM, verdict: 'tight' })])).toContain(
      '. Its pipe is tight: above 4,500 ft/min it throttles the collector.',
    );
    expect(said([drop('saw', { velocity: 6200 * FPM, verdict: 'tight' })])).toContain('Its hose');
  });

  it('says all that is wrong, the gravest first', () => {
    const bad = drop('saw', {
      need: 800 * CFM,
      velocity: 6200 * FPM,
      verdict: 'settles',
      slowest: { section: 'main', velocity: 2000 * FPM },
    });
    expect(said([bad])).toMatch(/settle there\. .*short of .*\. Its hose is tight/);
  });
});

describe('the sentence on several open drops', () => {
  it('lists two or three with their flows', () => {
    expect(said([drop('planer'), drop('saw', { flow: 610 * CFM })])).toBe(
      'Planer and Band saw open: 742 and 610 cfm; carries everywhere.',
    );
    expect(said([drop('planer'), drop('saw'), drop('lathe')])).toBe(
      'Planer, Band saw and Lathe open: 742, 742 and 742 cfm; carries everywhere.',
    );
  });

  it('counts more than three', () => {
    const four = ['planer', 'saw', 'lathe', 'sander'].map((id) => drop(id));
    expect(said(four)).toBe('4 drops open: 1,500 cfm in all; carries everywhere.');
    const short = four.map((each) => ({ ...each, need: 1, verdict: 'short' as const }));
    expect(said(short)).toContain('4 drops get less air than they need.');
  });

  it('names the slowest place and counts the others', () => {
    expect(said([settles('planer', 's', 2310), settles('saw', 'main', 2000)])).toContain(
      'The main by the door runs at 2,000 ft/min: chips will settle there, and in 1 other place.',
    );
    expect(said([settles('planer', 'main', 2000), settles('saw', 'main', 2000)])).toContain(
      'chips will settle there.',
    );
  });

  it('says whose pipe is tight and who is short', () => {
    const text = said([
      drop('planer', { need: 800 * CFM, verdict: 'short' }),
      drop('saw', { velocity: 6200 * FPM, verdict: 'tight' }),
    ]);
    expect(text).toContain('Planer is short of the 800 cfm it needs.');
    expect(text).toContain('The hose of Band saw is tight at 6,200 ft/min.');
  });
});

describe('the sentence on doubt', () => {
  it('tells of leaks when nothing is open', () => {
    const shut = drop('planer', { travel: 0, verdict: 'shut' });
    expect(said([shut], ['nothing open'])).toBe(
      'Nothing open: 1,500 cfm leaks in past the shut gates.',
    );
  });

  it.each([
    ['curve ends before the crossing: above the entered points', 'beyond the last entered point'],
    ['curve ends before the crossing: below the entered points', 'before the first entered point'],
    ['several crossings', 'more than one flow'],
    ['left of the peak', 'flow may pulse'],
    ['did not balance, worst at s', 'did not balance, worst at s: these numbers are no answer'],
  ])('does not keep %s to itself', (difficulty, words) => {
    expect(said([drop('planer')], [difficulty])).toContain(words);
  });

  it('says that no air moves where there is no suction', () => {
    const still = { ...state([drop('planer')], ['no suction']), operatingPoint: null };
    expect(sentence(shop, still, 'us')).toMatch(/^The collector gives no suction/);
  });
});

describe('verdictWords', () => {
  const words = (changes: Partial<DropReport>, id = 'planer') =>
    plain(verdictWords(shop, drop(id, changes), 'us'));

  it('gives the number that the verdict turns on', () => {
    expect(words({})).toBe('carries');
    expect(words({ verdict: 'shut' })).toBe('shut');
    const slowest = { section: 'main', velocity: 2310 * FPM };
    expect(words({ verdict: 'settles', slowest })).toBe(
      'settles: 2,310 ft/min in the main by the door',
    );
    expect(words({ verdict: 'short', need: 800 * CFM })).toBe('short: 800 cfm needed');
    const velocity = 6200 * FPM;
    expect(words({ verdict: 'tight', velocity }, 'saw')).toBe(
      'tight: 6,200 ft/min in its own hose',
    );
  });
});
