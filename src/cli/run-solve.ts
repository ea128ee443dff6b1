// The whole of `solve`: words of a command line in, texts for both streams and a status out.

import type { Air } from '../air/air.ts';
import { travelsWhenOpen, usualStates } from '../shop/gate-state.ts';
import { didYouMean } from '../shop/opening/nearest.ts';
import { showValue } from '../shop/opening/place.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { modelOf, type ShopModel } from '../shop/shop-model.ts';
import { stateReport } from '../shop/state-report.ts';
import { readArguments } from './arguments.ts';
import { readShop } from './read-shop.ts';
import { reportText, type SolvedState } from './report-text.ts';

/** What a run leaves behind. */
export interface Outcome {
  /** 0, or 2 where the question or the file was at fault. */
  readonly status: 0 | 2;
  readonly out: string;
  readonly errors: string;
}

/**
 * Answers a command line.
 *
 * @param words - the words after the name of the program
 * @returns what to print and the status to end with
 */
export function runSolve(words: readonly string[]): Outcome {
  const asked = readArguments(words);
  if (asked.kind === 'refused') return refuse([asked.message]);
  const read = readShop(asked.file);
  if (read.kind === 'refused') return refuse(read.lines);
  const { shop } = read;
  const strays = unknownDrops(shop, asked.open ?? []);
  if (strays.length > 0) return refuse(strays);

  const model = modelOf(shop);
  const states = solve(shop, model, asked.open);
  const out =
    asked.format === 'json'
      ? json(model.air, states)
      : reportText(shop, model.air, states, asked.system);
  return { status: 0, out, errors: '' };
}

function solve(shop: Shop, model: ShopModel, open: readonly string[] | undefined): SolvedState[] {
  const report = (ids: readonly string[]) => stateReport(model, travelsWhenOpen(shop.drops, ids));
  if (open !== undefined) {
    const heading = open.length === 0 ? 'All gates shut' : `Open: ${open.join(', ')}`;
    return [{ heading, report: report(open) }];
  }
  return usualStates(shop).map((state) => ({
    heading: state.kind === 'alone' ? undefined : `Gate set: ${state.name}`,
    report: report(state.open),
  }));
}

function json({ density, viscosity, pressure }: Air, states: readonly SolvedState[]): string {
  const answer = {
    air: { density, viscosity, pressure },
    states: states.map(({ report }) => report),
  };
  return `${JSON.stringify(answer, undefined, 2)}\n`;
}

function unknownDrops(shop: Shop, open: readonly string[]): string[] {
  const ids = shop.drops.map((drop) => drop.id);
  return open
    .filter((id) => !ids.includes(id))
    .map((id) => `--open: no drop has the id ${showValue(id)}${didYouMean(id, ids)}`);
}

function refuse(lines: readonly string[]): Outcome {
  return { status: 2, out: '', errors: `${lines.join('\n')}\n` };
}
