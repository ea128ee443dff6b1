// Straight pipe by family and size, in lengths of stock; hose by size, by the metre.

import type { Section } from '../schema/section-schema.ts';
import { packStock, type Piece, stockCount, type StockUse } from './pack-stock.ts';
import { pipeKey, type StockPipe, stockPipe } from './stock-pipe.ts';
import { widestFirst } from './widest-first.ts';

/** One kind of pipe in one size. */
export interface PipeLine {
  readonly key: string;
  readonly pipe: StockPipe;
  /** Straight pieces, in the order of the document. */
  readonly pieces: readonly Piece[];
  /** All pieces together [m] */
  readonly length: number;
  /** Length of one piece of stock [m] */
  readonly stockLength: number;
  readonly stocks: readonly StockUse[];
  /** How many lengths of stock [-] */
  readonly amount: number;
}

/** One kind of hose in one size. */
export interface HoseLine {
  readonly key: string;
  readonly pipe: StockPipe;
  /** Along the hoses as they lie [m] */
  readonly lying: number;
  /** What has to be bought: the hoses pulled tight [m] */
  readonly amount: number;
  readonly pieces: readonly Piece[];
}

interface Bundle {
  readonly pipe: StockPipe;
  readonly sections: readonly Section[];
}

/**
 * The pipes of a shop in lengths of stock.
 *
 * @param sections - the sections of a shop in order
 * @param stockLength - length of the stock of a family [m]
 * @returns a line for each kind and size, the widest of a family first
 */
export function pipeLines(
  sections: readonly Section[],
  stockLength: (family: string) => number,
): PipeLine[] {
  return bundles(sections, 'pipe').map(({ pipe, sections: alike }) => {
    const pieces = alike.map(({ id, length }) => ({ section: id, length }));
    const stock = stockLength(pipe.family);
    const stocks = packStock(pieces, stock);
    return {
      key: `pipe-${pipeKey(pipe)}`,
      pipe,
      pieces,
      length: total(pieces),
      stockLength: stock,
      stocks,
      amount: stockCount(stocks),
    };
  });
}

/**
 * The hoses of a shop.
 *
 * @param sections - the sections of a shop in order
 * @returns a line for each kind and size, the widest of a family first
 */
export function hoseLines(sections: readonly Section[]): HoseLine[] {
  return bundles(sections, 'hose').map(({ pipe, sections: alike }) => {
    const pieces = alike.map(({ id, length, compression = 0 }) => ({
      section: id,
      length: length / (1 - compression),
    }));
    const lying = alike.reduce((sum, { length }) => sum + length, 0);
    return { key: `hose-${pipeKey(pipe)}`, pipe, lying, amount: total(pieces), pieces };
  });
}

/** Sections of the same pipe, kinds in the order of the document. A section of no length is none. */
function bundles(sections: readonly Section[], kind: StockPipe['kind']): Bundle[] {
  const alike = new Map<string, { pipe: StockPipe; sections: Section[] }>();
  for (const section of sections) {
    const pipe = stockPipe(section.pipe);
    if (pipe.kind !== kind || section.length === 0) continue;
    const key = pipeKey(pipe);
    const met = alike.get(key);
    if (met) met.sections.push(section);
    else alike.set(key, { pipe, sections: [section] });
  }
  return widestFirst([...alike.values()], ({ pipe }) => pipe);
}

function total(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}
