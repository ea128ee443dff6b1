// Pasted tables against points that were read by hand, and tables written in either style read back.
import { assert, constantFrom, array, integer, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PasteAnswers, PasteOutcome } from '../../../../src/state/pasted/paste-outcome.ts';
import { readPastedPoints } from '../../../../src/state/pasted-points.ts';
import type { UnitSystem } from '../../../../src/units/quantity.ts';
import { PASTED_TEXTS } from './pasted-texts.ts';

/** In SI; NIST SP 811 and, for the inch of water, ANSI/AMCA 210. */
const SIZE = { cfm: 4.719474432e-4, 'm3/h': 1 / 3600, 'm3/s': 1, 'l/s': 1e-3 } as const;
const PRESSURE = { inwg: 249.08891, Pa: 1, mmwg: 249.08891 / 25.4 } as const;

/** Answers one question after another. */
function answered(
  text: string,
  system: UnitSystem,
  asked: readonly (readonly [RegExp, string])[] = [],
): PasteOutcome {
  let answers: PasteAnswers = {};
  for (const [words, answer] of asked) {
    const outcome = readPastedPoints(text, system, answers);
    if (outcome.kind !== 'question') throw new Error(`not asked: ${words}, but ${outcome.kind}`);
    expect(outcome.question.words).toMatch(words);
    const choice = outcome.question.choices.find((each) => each.words === answer);
    if (!choice) {
      throw new Error(`${answer} is none of ${JSON.stringify(outcome.question.choices)}`);
    }
    answers = choice.answers;
  }
  return readPastedPoints(text, system, answers);
}

describe('pasted points', () => {
  it.each(PASTED_TEXTS)('$name', ({ text, system, units, pairs, asked, understood }) => {
    const outcome = answered(text, system, asked);
    if (outcome.kind !== 'points') throw new Error(JSON.stringify(outcome));
    expect(outcome.points).toHaveLength(pairs.length);
    outcome.points.forEach(({ flow, pressure }, i) => {
      // Read and converted once: no more than rounding may lie between.
      expect(flow / SIZE[units[0]]).toBeCloseTo(pairs[i]![0], 9);
      expect(pressure / PRESSURE[units[1]]).toBeCloseTo(pairs[i]![1], 9);
    });
    expect(outcome.understood).toMatch(new RegExp(`^${pairs.length} points: flow in `));
    if (understood) expect(outcome.understood).toMatch(understood);
  });

  it('are none where one amount or plain words are pasted', () => {
    for (const text of [
      '1200',
      '1,200 cfm',
      '12\t3',
      'a\tb\nc\td',
      '',
      'Call me at noon.\nYours',
    ]) {
      expect(readPastedPoints(text, 'us')).toEqual({ kind: 'no points' });
    }
  });

  it('are refused in a unit that is not known, which is named', () => {
    const outcome = readPastedPoints('0 cfm\t0.38 psi\n400 cfm\t0.35 psi', 'us');
    expect(outcome).toMatchObject({ kind: 'refused', message: expect.stringMatching(/^“psi”/) });
  });

  it('never throw, whatever is pasted', () => {
    const pieces = [
      '0',
      '1,200',
      '1.234',
      ' ',
      '\t',
      ';',
      ',',
      '|',
      '\n',
      '"',
      'cfm',
      'Pa',
      '½',
      '-',
      'e9',
    ];
    assert(
      property(
        array(constantFrom(...pieces), { maxLength: 40 }),
        constantFrom('us', 'metric'),
        (parts, system) => {
          readPastedPoints(parts.join(''), system);
        },
      ),
      { seed: 4, numRuns: 500 },
    );
  });
});

const row = record({
  step: integer({ min: 1, max: 900 }),
  pressure: integer({ min: 300, max: 24_000 }),
});
const style = constantFrom(
  { locale: 'en-US', between: '\t' },
  { locale: 'en-US', between: ';' },
  { locale: 'de-DE', between: ';' },
  { locale: 'de-DE', between: '\t' },
  { locale: 'fr-FR', between: '\t' },
  { locale: 'de-CH', between: '  ' },
);

describe('a table written by the browser in a style of some country', () => {
  it('reads back as it was, or is asked about and then reads back', () => {
    assert(
      property(array(row, { minLength: 2, maxLength: 12 }), style, (rows, { locale, between }) => {
        let flow = 0;
        const truth = rows.map(({ step, pressure }) => [(flow += step), pressure / 10] as const);
        const whole = new Intl.NumberFormat(locale);
        const tenth = new Intl.NumberFormat(locale, { minimumFractionDigits: 1 });
        const text = [
          ['m³/h', 'Pa'].join(between),
          ...truth.map(([q, p]) => [whole.format(q), tenth.format(p)].join(between)),
        ].join('\n');
        let outcome = readPastedPoints(text, 'metric');
        if (outcome.kind === 'question') {
          const right = outcome.question.choices.flatMap(({ answers }) => {
            const again = readPastedPoints(text, 'metric', answers);
            return again.kind === 'points' && isTruth(again.points, truth) ? [again] : [];
          });
          expect(right).toHaveLength(1);
          outcome = right[0]!;
        }
        // Flows too small for any collector may be refused or asked about, but are never others.
        expect(outcome.kind === 'points' && isTruth(outcome.points, truth)).toBe(true);
      }),
      { seed: 11, numRuns: 400 },
    );
  });
});

function isTruth(
  points: readonly { readonly flow: number; readonly pressure: number }[],
  truth: readonly (readonly [number, number])[],
): boolean {
  return (
    points.length === truth.length &&
    points.every(
      ({ flow, pressure }, i) =>
        Math.abs(flow * 3600 - truth[i]![0]) < 1e-6 && Math.abs(pressure - truth[i]![1]) < 1e-6,
    )
  );
}
