// The tables that answer what a main of another size does: all sizes, then one of them drop by drop
// and set by set.

import { effectWords } from '../../shop/decisions/main-sentence.ts';
import type { EffectKind } from '../../shop/decisions/main-verdict.ts';
import type { MainRow, MainSizes } from '../../shop/decisions/main-sizes.ts';
import type { MainState } from '../../shop/decisions/main-state.ts';
import { verdictWords } from '../../shop/verdict-words.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel } from '../../units/quantity.ts';
import type { AnswerCell, AnswerRow } from './answer-rows.ts';
import { changeWords } from './change-words.ts';
import { type MainSpeech, meanGain, servedAlone } from './main-words.ts';
import { usualSizes } from './pipe-words.ts';
import type { AnswerRows } from './reach-tables.ts';

/**
 * The sizes that the reader asks for in a shop, by rising diameter.
 *
 * @param sizes - the answer
 * @param speech - units
 * @returns their rows
 */
export function shownRows({ rows, family }: MainSizes, speech: MainSpeech): readonly MainRow[] {
  const usual = usualSizes(family, speech.system);
  return rows
    .filter(({ size, isToday }) => usual.includes(size.id) || isToday)
    .toSorted((a, b) => a.size.diameter - b.size.diameter);
}

/**
 * Every size in one row.
 *
 * @param rows - the sizes
 * @param best - the one that is best
 * @param speech - names and units
 * @returns the table; each row can be taken over
 */
export function mainTable(
  rows: readonly MainRow[],
  best: MainRow | undefined,
  speech: MainSpeech,
): AnswerRows {
  const { shop, system } = speech;
  const countOf = (row: MainRow, kind: EffectKind): AnswerCell => {
    const count = row.drops.filter((drop) => drop.kind === kind).length;
    return { text: count === 0 ? '–' : String(count), by: count };
  };
  return {
    columns: [
      { name: 'main of' },
      { name: 'served', unit: 'alone' },
      { name: 'air', unit: 'mean change' },
      { name: 'helps', unit: 'drops' },
      { name: 'with a 2nd gate', unit: 'drops' },
      { name: 'hurts', unit: 'drops' },
      { name: 'slowest in the main', unit: unitLabel('velocity', system) },
    ],
    rows: rows.map((row) => {
      const served = servedAlone(row, shop);
      const gain = meanGain(row);
      const slowest = slowestAlone(row);
      return {
        key: row.size.id,
        cells: [
          row.size.name,
          { text: `${served} of ${shop.drops.length}`, by: served },
          { text: changeWords(gain), by: gain },
          countOf(row, 'helps'),
          countOf(row, 'second gate'),
          countOf(row, 'hurts'),
          slowest === undefined
            ? '–'
            : { text: formatQuantity('velocity', system, slowest).number, by: slowest },
        ],
        ...markOf(row, best),
        ...(row.isToday ? {} : { take: mainWords(row) }),
      };
    }),
  };
}

/** What a row stands for, where it is taken over. */
export function mainWords({ size }: MainRow): string {
  return `main of ${size.name}`;
}

function markOf(row: MainRow, best: MainRow | undefined): { readonly mark?: string } {
  if (row.isToday) return { mark: row === best ? 'today, best' : 'today' };
  return row === best ? { mark: 'best' } : {};
}

/** The lowest speed in the main while any one drop is open alone [m/s]. */
function slowestAlone({ states }: MainRow): number | undefined {
  const speeds = states.flatMap(({ state, mainSlowest }) =>
    state.kind === 'alone' && mainSlowest ? [mainSlowest.velocity] : [],
  );
  return speeds.length === 0 ? undefined : Math.min(...speeds);
}

/**
 * One size, drop by drop, each alone.
 *
 * @param row - the size
 * @param speech - names and units
 * @returns the table
 */
export function mainDropTable(row: MainRow, speech: MainSpeech): AnswerRows {
  return {
    columns: [{ name: 'drop, alone' }, ...figureColumns(speech), { name: 'what it does' }],
    rows: row.drops.map((drop, i) => ({
      key: drop.id,
      cells: [
        drop.name,
        ...figures(drop.before.flow, drop.after, row.states[i], speech),
        { text: effectWords(speech.shop, drop, speech.system), verdict: drop.after.verdict },
      ],
    })),
  };
}

/**
 * One size, in every saved gate set.
 *
 * @param row - the size
 * @param sizes - the answer, for the main of today
 * @param speech - names and units
 * @returns the table; empty where no gate set is saved
 */
export function mainSetTable(row: MainRow, { today }: MainSizes, speech: MainSpeech): AnswerRows {
  const { shop, system } = speech;
  return {
    columns: [
      { name: 'open together' },
      { name: 'drop' },
      ...figureColumns(speech),
      { name: 'verdict' },
    ],
    rows: row.states.flatMap((then, i): AnswerRow[] => {
      if (then.state.kind === 'alone') return [];
      return then.drops.map((drop) => {
        const before = today.states[i]?.drops.find(({ id }) => id === drop.id)?.flow ?? 0;
        return {
          key: `${i} ${drop.id}`,
          cells: [
            then.state.name,
            drop.name,
            ...figures(before, drop, then, speech),
            { text: verdictWords(shop, drop, system), verdict: drop.verdict },
          ],
        };
      });
    }),
  };
}

function figureColumns({ system }: MainSpeech) {
  const flow = unitLabel('flow', system);
  const speed = unitLabel('velocity', system);
  return [
    { name: 'air today', unit: flow },
    { name: 'then', unit: flow },
    { name: 'change', unit: '' },
    { name: 'own pipe', unit: speed },
    { name: 'slowest in the main', unit: speed },
  ];
}

function figures(
  before: number,
  after: { readonly flow: number; readonly velocity: number },
  state: MainState | undefined,
  { system }: MainSpeech,
): (string | AnswerCell)[] {
  const cell = (quantity: 'flow' | 'velocity', si: number): AnswerCell => ({
    text: formatQuantity(quantity, system, si).number,
    by: si,
  });
  const share = before > 0 ? after.flow / before - 1 : 0;
  const slowest = state?.mainSlowest;
  return [
    cell('flow', before),
    cell('flow', after.flow),
    { text: changeWords(share), by: share },
    cell('velocity', after.velocity),
    slowest === undefined ? '–' : cell('velocity', slowest.velocity),
  ];
}
