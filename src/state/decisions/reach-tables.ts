// The tables that answer how far a drop reaches: every limit, every size, and what it costs the others.

import { editOf } from '../../shop/decisions/choice.ts';
import type { DropChange } from '../../shop/decisions/reach-costs.ts';
import type { ReachSize } from '../../shop/decisions/reach-sizes.ts';
import type { Reach } from '../../shop/decisions/reach.ts';
import { verdictWords } from '../../shop/verdict-words.ts';
import { formatQuantity } from '../../units/format.ts';
import { type Quantity, unitLabel } from '../../units/quantity.ts';
import type { AnswerCell, AnswerColumn, AnswerRow } from './answer-rows.ts';
import { changeWords } from './change-words.ts';
import { sizeName, usualSizes, workedOutLength } from './pipe-words.ts';
import type { ReachAnswer, ReachQuestion } from './question.ts';
import { limitWords, place, type ReachSpeech, runInWords } from './reach-words.ts';

/** A table of answers. */
export interface AnswerRows {
  readonly columns: readonly AnswerColumn[];
  readonly rows: readonly AnswerRow[];
}

/**
 * Every limit, by rising length.
 *
 * @param answer - how far the drop reaches
 * @param speech - names and units
 * @returns the table
 */
export function limitTable({ reach }: ReachAnswer, speech: ReachSpeech): AnswerRows {
  return {
    columns: [
      { name: 'added length', unit: '' },
      { name: 'what happens there' },
      { name: 'where' },
    ],
    rows: reach.limits.map((limit, i) => ({
      key: String(i),
      cells: [
        { text: workedOutLength(limit.length, speech.system), by: limit.length },
        limitWords(limit),
        limit.kind === 'need' ? 'at the machine' : place(speech, limit.section),
      ],
      ...(reach.end.kind === 'limit' && reach.end.limit === limit
        ? { mark: 'gives out first' }
        : {}),
    })),
  };
}

/**
 * The run in every size that is asked for in the reader's shops, and in the one that was chosen.
 *
 * @param question - what was asked
 * @param answer - what came of it
 * @param speech - names and units
 * @returns the table; each row can be taken over
 */
export function sizeTable(
  question: ReachQuestion,
  { sizes }: ReachAnswer,
  speech: ReachSpeech,
): AnswerRows {
  const { family } = question;
  const usual = usualSizes(family, speech.system);
  const { pipe } = question.run;
  const chosen = pipe.kind === 'catalogue' ? pipe.size : undefined;
  const best = sizes.best === undefined ? undefined : sizes.sizes[sizes.best];
  const shown = sizes.sizes
    .filter((each) => usual.includes(each.size.id) || each.size.id === chosen || each === best)
    .toSorted((a, b) => a.size.diameter - b.size.diameter);
  const wanted = formatQuantity('length', speech.system, question.length).text;
  return {
    columns: [
      { name: 'size' },
      { name: 'reaches', unit: '' },
      { name: `air at ${wanted}`, unit: unitLabel('flow', speech.system) },
      { name: 'slowest on its way', unit: unitLabel('velocity', speech.system) },
      { name: `verdict at ${wanted}` },
    ],
    rows: shown.map((each) => {
      const { size, drop, reach } = each;
      const name = sizeName(family, size.id);
      return {
        key: size.id,
        cells: [
          name,
          reachCell(reach, speech),
          figure(speech, 'flow', drop.flow),
          figure(speech, 'velocity', drop.slowest.velocity),
          {
            text: verdictWords(editOf(each.choice)(speech.shop), drop, speech.system),
            verdict: drop.verdict,
          },
        ],
        ...sizeMark(each, best, chosen),
        take: runInWords(question, size.id, speech),
      };
    }),
  };
}

function sizeMark(
  each: ReachSize,
  best: ReachSize | undefined,
  chosen: string | undefined,
): { readonly mark?: string } {
  const isChosen = each.size.id === chosen;
  if (each === best) return { mark: isChosen ? 'chosen, serves best' : 'serves best' };
  return isChosen ? { mark: 'chosen' } : {};
}

/**
 * What the wanted length does to the drops of each saved gate set.
 *
 * @param answer - with the costs
 * @param speech - names and units
 * @returns the table; empty where no gate set is saved
 */
export function costTable({ costs }: ReachAnswer, speech: ReachSpeech): AnswerRows {
  const flow = unitLabel('flow', speech.system);
  const row = (set: string, change: DropChange, key: string): AnswerRow => {
    const { before, after } = change;
    const share = before.flow > 0 ? after.flow / before.flow - 1 : 0;
    return {
      key,
      cells: [
        set,
        after.name,
        figure(speech, 'flow', before.flow),
        figure(speech, 'flow', after.flow),
        { text: changeWords(share), by: share },
        { text: verdictWords(speech.edited, after, speech.system), verdict: after.verdict },
      ],
    };
  };
  return {
    columns: [
      { name: 'open together' },
      { name: 'drop' },
      { name: 'air today', unit: flow },
      { name: 'then', unit: flow },
      { name: 'change', unit: '' },
      { name: 'verdict then' },
    ],
    rows: costs.flatMap(({ state, others, own }, i) =>
      [...(own ? [own] : []), ...others].map((change, k) => row(state.name, change, `${i} ${k}`)),
    ),
  };
}

function reachCell(reach: Reach, { system }: ReachSpeech): AnswerCell {
  const text = workedOutLength(reach.length, system);
  return { text: reach.end.kind === 'not within' ? `over ${text}` : text, by: reach.length };
}

function figure({ system }: ReachSpeech, quantity: Quantity, si: number): AnswerCell {
  return { text: formatQuantity(quantity, system, si).number, by: si };
}
