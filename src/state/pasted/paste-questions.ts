// The questions that a pasted text may leave open, in plain words.

import type { UnitSystem } from '../../units/quantity.ts';
import { type UnitName, UNITS } from '../../units/unit.ts';
import type { ColumnPair } from './choose-columns.ts';
import type { PasteAnswers, PasteQuestion } from './paste-outcome.ts';
import type { PasteWay } from './paste-ways.ts';
import { columnName, numberText } from './paste-words.ts';
import type { PastedColumn, PastedTable } from './pasted-table.ts';

/** Offered where no unit makes the numbers a collector's. */
const ANY_UNIT: Readonly<Record<'flow' | 'pressure', readonly UnitName[]>> = {
  flow: ['cfm', 'cubicMetrePerHour', 'litrePerSecond', 'cubicMetrePerSecond'],
  pressure: ['inchOfWater', 'pascal', 'kilopascal', 'millimetreOfWater', 'hectopascal'],
};

/** Which of several ways to cut and read the text is meant, by the first line where they differ. */
export function wayQuestion(ways: readonly PasteWay[], answers: PasteAnswers): PasteQuestion {
  const [first, ...others] = ways;
  const texts = (way: PasteWay, line: number) => lineText(way, line);
  const line = Math.max(
    0,
    first!.table.lines.findIndex((_, i) =>
      others.some((other) => texts(other, i) !== texts(first!, i)),
    ),
  );
  return {
    words: `“${first!.table.lines[line]}” can be read in more than one way. Which is meant?`,
    choices: ways.map((way) => ({ words: texts(way, line), answers: { ...answers, way: way.id } })),
  };
}

/** Which columns are meant, where there are several. */
export function columnsQuestion(
  table: PastedTable,
  pairs: readonly ColumnPair[],
  answers: PasteAnswers,
): PasteQuestion {
  return {
    words: `There are ${table.columns.length} columns of numbers. Which are the flow and the pressure?`,
    choices: pairs.map((columns) => ({
      words: `flow ${columnName(table, columns.flow)}, pressure ${columnName(table, columns.pressure)}`,
      answers: { ...answers, columns },
    })),
  };
}

/** Which of two columns is the flow, where they look swapped. */
export function orderQuestion(
  table: PastedTable,
  { flow, pressure }: ColumnPair,
  answers: PasteAnswers,
): PasteQuestion {
  const asIs = { flow, pressure };
  const swapped = { flow: pressure, pressure: flow };
  const hasNoFlow = (column: number) =>
    table.columns[column]!.amounts.some((amount) => amount?.value === 0);
  const isAsIsLikelier = hasNoFlow(flow) && !hasNoFlow(pressure);
  const orders = isAsIsLikelier ? [asIs, swapped] : [swapped, asIs];
  return {
    words: 'The columns look swapped, and nothing is written over them. Which are the flows?',
    choices: orders.map((columns) => ({
      words: columnSpan(table.columns[columns.flow]!),
      answers: { ...answers, columns },
    })),
  };
}

/** In what unit a column is, where nothing says it. */
export function unitQuestion(
  column: PastedColumn,
  holds: 'flow' | 'pressure',
  likely: readonly UnitName[],
  system: UnitSystem,
  answers: PasteAnswers,
): PasteQuestion {
  const usual = system === 'us' ? ANY_UNIT[holds] : ANY_UNIT[holds].toReversed();
  const names = likely.length > 0 ? likely : usual;
  const key = holds === 'flow' ? 'flowUnit' : 'pressureUnit';
  return {
    words: `No unit is written for the ${holds}s, ${columnSpan(column)}. In what unit are they?`,
    choices: names.map((name) => ({
      words: UNITS[name].label,
      answers: { ...answers, [key]: name },
    })),
  };
}

function columnSpan({ amounts }: PastedColumn): string {
  const values = amounts.flatMap((amount) => (amount ? [amount.value] : []));
  return `${numberText(values[0]!)} to ${numberText(values.at(-1)!)}`;
}

function lineText({ table, chosen }: PasteWay, line: number): string {
  const value = (column: number) => numberText(table.columns[column]?.amounts[line]?.value ?? 0);
  if (chosen.kind !== 'open') {
    return `flow ${value(chosen.pair.flow)}, pressure ${value(chosen.pair.pressure)}`;
  }
  return `${table.columns.length} columns, ${table.columns.map((_, at) => value(at)).join(' | ')}`;
}
