// Points as they come from a spreadsheet, a mail or a leaflet. Where the text can be read in more than
// one way, or doesn't say its units, it is asked about, one question at a time; nothing is guessed in
// silence, and what was understood is said back.

import type { CurvePoint } from '../curve/curve-data.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { toSi, UNITS } from '../units/unit.ts';
import { amountsInSentence, type SentencePoints } from './pasted/amounts-in-sentence.ts';
import type { ColumnPair } from './pasted/choose-columns.ts';
import { columnUnits, isLikely, likelyUnits } from './pasted/column-units.ts';
import type { PasteAnswers, PasteOutcome } from './pasted/paste-outcome.ts';
import {
  columnsQuestion,
  orderQuestion,
  unitQuestion,
  wayQuestion,
} from './pasted/paste-questions.ts';
import { type PasteWay, pasteWays } from './pasted/paste-ways.ts';
import { understoodWords } from './pasted/paste-words.ts';

/** Longer texts are no table of points. */
const LONGEST_TEXT = 200_000;
const NO_POINTS = { kind: 'no points' } as const;

/**
 * Reads pasted text as points of a curve.
 *
 * @param text - what was pasted
 * @param system - the page's units, which are offered first where the text names none
 * @param answers - to the questions asked so far
 * @returns points, a question, a refusal, or that these are no points
 */
export function readPastedPoints(
  text: string,
  system: UnitSystem,
  answers: PasteAnswers = {},
): PasteOutcome {
  if (text.length > LONGEST_TEXT) return NO_POINTS;
  const ways = pasteWays(text, system);
  const sentence = sentenceOf(text);
  if (sentence && sentence.points.length >= (ways[0]?.table.lines.length ?? 0)) {
    const { flowUnit, pressureUnit } = sentence;
    return points(sentence.points, { flow: flowUnit.label, pressure: pressureUnit.label });
  }
  const way = ways.length > 1 ? ways.find(({ id }) => id === answers.way) : ways[0];
  if (!way) return ways.length > 1 ? asked(wayQuestion(ways, answers)) : NO_POINTS;
  return fromTable(way, system, answers);
}

/** One decimal mark must fit all of it, or the numbers would be anybody's guess. */
function sentenceOf(text: string): SentencePoints | undefined {
  const [first, ...others] = (['point', 'comma'] as const).flatMap((mark) => {
    const read = amountsInSentence(text, mark);
    const isFit =
      read &&
      isLikely(
        'flow',
        read.points.map(({ flow }) => flow),
      ) &&
      isLikely(
        'pressure',
        read.points.map(({ pressure }) => pressure),
      );
    return isFit ? [read] : [];
  });
  const isClear = others.every((other) => JSON.stringify(other) === JSON.stringify(first));
  return isClear ? first : undefined;
}

function fromTable(way: PasteWay, system: UnitSystem, answers: PasteAnswers): PasteOutcome {
  const { table, chosen } = way;
  if (!answers.columns) {
    if (chosen.kind === 'open') return asked(columnsQuestion(table, chosen.pairs, answers));
    if (chosen.kind === 'unlabelled' && looksSwapped(way, chosen.pair)) {
      return asked(orderQuestion(table, chosen.pair, answers));
    }
  }
  const pair = answers.columns ?? (chosen.kind === 'open' ? chosen.pairs[0]! : chosen.pair);
  const read: { values: number[]; label: string; isGuess: boolean }[] = [];
  for (const holds of ['flow', 'pressure'] as const) {
    const column = table.columns[pair[holds]]!;
    const key = holds === 'flow' ? 'flowUnit' : 'pressureUnit';
    let isGuess = false;
    let units = columnUnits(column, holds, answers[key]);
    if (units.kind === 'unsaid') {
      const likely = likelyUnits(column, holds, system);
      const [only, ...others] = likely;
      if (only === undefined || others.length > 0) {
        return asked(unitQuestion(column, holds, likely, system, answers));
      }
      units = columnUnits(column, holds, only);
      isGuess = true;
    }
    if (units.kind !== 'said') {
      const written = units.kind === 'unknown' ? units.written : '';
      return { kind: 'refused', message: unknownUnit(written, holds) };
    }
    const said = units.units;
    const values = column.amounts.map((each, i) =>
      each ? Number(toSi(said[i] ?? UNITS.plain, each.value).toPrecision(15)) : Number.NaN,
    );
    read.push({ values, label: units.main.label, isGuess });
  }
  const [flows, pressures] = read;
  const all = flows!.values.map((flow, i) => ({ flow, pressure: pressures!.values[i]! }));
  const whole = all.filter(({ flow, pressure }) => !Number.isNaN(flow + pressure));
  return points(whole, {
    flow: flows!.label,
    pressure: pressures!.label,
    guessed: read.flatMap(({ label, isGuess }) => (isGuess ? [label] : [])),
    table,
    pair,
    halfFilled: all.length - whole.length,
  });
}

/** Suction written as negative numbers is turned about. */
function points(
  all: readonly CurvePoint[],
  facts: Omit<Parameters<typeof understoodWords>[0], 'count' | 'isTurned'>,
): PasteOutcome {
  const isTurned =
    all.every(({ pressure }) => pressure <= 0) && all.some((each) => each.pressure < 0);
  const read = isTurned
    ? all.map(({ flow, pressure }) => ({ flow, pressure: pressure === 0 ? 0 : -pressure }))
    : all;
  return {
    kind: 'points',
    points: read,
    understood: understoodWords({ ...facts, count: read.length, isTurned }),
  };
}

function asked(question: Extract<PasteOutcome, { kind: 'question' }>['question']): PasteOutcome {
  return { kind: 'question', question };
}

function unknownUnit(written: string, holds: 'flow' | 'pressure'): string {
  const right = holds === 'flow' ? 'cfm, m³/h, m³/s or L/s' : 'in. w.g., Pa, kPa, mbar or mm w.g.';
  return `“${written}” is not a unit of ${holds} known here. Change it to ${right} and paste again.`;
}

/** The first column falls while the second rises, or only the second is as large as flows are. */
function looksSwapped({ table }: PasteWay, { flow, pressure }: ColumnPair): boolean {
  const first = table.columns[flow]!.amounts.map((amount) => amount?.value ?? 0);
  const second = table.columns[pressure]!.amounts.map((amount) => amount?.value ?? 0);
  const goes = (values: readonly number[], sign: number) =>
    values.slice(1).every((value, i) => sign * (value - values[i]!) > 0);
  if (goes(first, 1)) return false;
  return (
    (goes(first, -1) && goes(second, 1)) || (Math.max(...first) < 30 && Math.max(...second) > 100)
  );
}
