// Fittings by kind, angle, radius and size, and gates by size.

import type { Fitting } from '../schema/fitting-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { type Counted, countAlike } from './counted.ts';
import { pipeKey, type StockPipe, stockPipe } from './stock-pipe.ts';
import { widestFirst } from './widest-first.ts';

/** Fittings that are alike. */
export interface FittingLine extends Counted {
  /** One of them; its own count and coefficient say nothing of the others. */
  readonly fitting: Fitting;
  /** The pipe that it belongs to. */
  readonly pipe: StockPipe;
}

/** Gates of one size. */
export interface GateLine extends Counted {
  /** A pipe of that size. */
  readonly pipe: StockPipe;
}

/** So much of a name goes into a key. */
const NAME_IN_KEY = 120;

/**
 * The fittings of a shop.
 *
 * @param shop - a shop in order
 * @returns a line for each kind, angle, radius, pipe and size, by pipe, the widest first
 */
export function fittingLines({ sections }: Pick<Shop, 'sections'>): FittingLine[] {
  const all = sections.flatMap((section) => {
    const pipe = stockPipe(section.pipe);
    return section.fittings.map(
      (fitting): FittingLine => ({
        key: `${shapeKey(fitting)}-${pipeKey(pipe)}`,
        amount: fitting.count ?? 1,
        fitting,
        pipe,
      }),
    );
  });
  return widestFirst(countAlike(all), ({ pipe }) => pipe);
}

/**
 * The gates of a shop, each in the size of the pipe or hose that its drop feeds.
 *
 * @param shop - a shop in order
 * @returns a line for each size, the widest first
 */
export function gateLines({ sections, drops }: Pick<Shop, 'sections' | 'drops'>): GateLine[] {
  const all = drops.flatMap(({ gate, into }): GateLine[] => {
    const section = sections.find(({ id }) => id === into);
    if (gate === undefined || section === undefined) return [];
    const pipe = stockPipe(section.pipe);
    return [{ key: `gate-${pipe.size}`, amount: 1, pipe }];
  });
  return countAlike(all).toSorted((a, b) => b.pipe.diameter - a.pipe.diameter);
}

function shapeKey(fitting: Fitting): string {
  switch (fitting.kind) {
    case 'bend':
      return `bend-${fitting.angle}-${fitting.radius}`;
    case 'mitre':
      return `mitre-${fitting.angle}`;
    case 'gored':
      return `gored-${fitting.angle}-${fitting.radius}-${fitting.pieces}`;
    case 'plain':
      return `other-${(fitting.name ?? '').slice(0, NAME_IN_KEY)}`;
    default:
      return fitting satisfies never;
  }
}
