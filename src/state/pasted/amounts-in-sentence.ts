// Points in running text: “600 cfm at 8.5 in. w.g., 800 cfm at 7.9 in. w.g.” Each number has its unit.

import { tidyText } from '../../units/tidy-text.ts';
import type { Unit } from '../../units/unit.ts';
import { toSi } from '../../units/unit.ts';
import { unitBehind } from './column-hint.ts';
import { type DecimalMark, writtenAmount } from './written-amount.ts';
import type { CurvePoint } from '../../curve/curve-data.ts';

/** Longest spelling of a unit, in characters. */
const LONGEST_UNIT = 24;

interface Amount {
  readonly value: number;
  readonly unit: Unit;
}

/** Points of a sentence, with the units that they were written in. */
export interface SentencePoints {
  readonly points: readonly CurvePoint[];
  readonly flowUnit: Unit;
  readonly pressureUnit: Unit;
}

/**
 * Reads pairs of flow and pressure out of running text.
 *
 * @param text - any text
 * @param mark - what parts decimals off
 * @returns two points or more, or undefined; also where a flow has no pressure beside it
 */
export function amountsInSentence(text: string, mark: DecimalMark): SentencePoints | undefined {
  const amounts = amountsOf(tidyText(text), mark);
  if (!amounts) return undefined;
  const points: CurvePoint[] = [];
  let flowUnit: Unit | undefined;
  let pressureUnit: Unit | undefined;
  for (let i = 0; i + 1 < amounts.length; i += 2) {
    const pair = [amounts[i]!, amounts[i + 1]!];
    const flow = pair.find(({ unit }) => unit.dimension === 'flow');
    const pressure = pair.find(({ unit }) => unit.dimension === 'pressure');
    if (!flow || !pressure) return undefined;
    flowUnit ??= flow.unit;
    pressureUnit ??= pressure.unit;
    points.push({
      flow: toSi(flow.unit, flow.value),
      pressure: toSi(pressure.unit, pressure.value),
    });
  }
  const isWhole = amounts.length % 2 === 0 && points.length > 1;
  return isWhole && flowUnit && pressureUnit ? { points, flowUnit, pressureUnit } : undefined;
}

function amountsOf(text: string, mark: DecimalMark): Amount[] | undefined {
  const found: Amount[] = [];
  const begin = /(?<![\p{L}\d.,^])\d/gu;
  for (let match = begin.exec(text); match; match = begin.exec(text)) {
    const behind = text.slice(match.index);
    const amount = writtenAmount(behind, mark);
    if (!amount && /^[\d.,]*[.,]/.test(behind)) return undefined;
    if (!amount) continue;
    const length = behind.length - amount.unit.length;
    const unit = unitAtStart(behind.slice(length, length + LONGEST_UNIT));
    if (unit) found.push({ value: amount.value, unit });
    begin.lastIndex = match.index + Math.max(1, length);
  }
  return found;
}

/** The longest spelling of flow or pressure that a text begins with and that ends with a word. */
function unitAtStart(text: string): Unit | undefined {
  for (let end = text.length; end > 0; end--) {
    const isWordEnd =
      !/[\p{L}\d]/u.test(text[end] ?? ' ') || !/[\p{L}\d]/u.test(text[end - 1] ?? '');
    const unit = isWordEnd ? unitBehind(text.slice(0, end).trim()) : undefined;
    if (unit?.dimension === 'flow' || unit?.dimension === 'pressure') return unit;
  }
  return undefined;
}
