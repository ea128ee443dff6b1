// What has to be bought and cut for a shop: straight pipe in lengths of stock, hose, fittings, wyes,
// gates, reducers and connectors. Not in it: what the document doesn't know of, such as hangers, clamps,
// tape, hoods, the collector and what joins it to the main.

import type { Shop } from '../schema/shop-schema.ts';
import { sectionTree } from '../section-tree.ts';
import { type ChangeLine, changeLines } from './change-lines.ts';
import { type FittingLine, fittingLines, type GateLine, gateLines } from './part-lines.ts';
import { type HoseLine, hoseLines, type PipeLine, pipeLines } from './stock-lines.ts';
import { type WyeLine, wyeLines } from './wye-lines.ts';

/** All that is bought, group by group. */
export interface CutList {
  readonly pipes: readonly PipeLine[];
  readonly hoses: readonly HoseLine[];
  readonly fittings: readonly FittingLine[];
  readonly wyes: readonly WyeLine[];
  readonly gates: readonly GateLine[];
  readonly changes: readonly ChangeLine[];
}

/** What a cut list is made from. */
export type CutListShop = Pick<Shop, 'sections' | 'drops' | 'purchase'>;

/**
 * The cut list of a shop.
 *
 * @param shop - a shop in order
 * @param usualStock - length of stock of the families for which the shop says none, above 0 [m]
 * @returns the lines, group by group
 */
export function cutList(shop: CutListShop, usualStock: number): CutList {
  const tree = sectionTree(shop);
  const chosen = shop.purchase?.stockLengths ?? [];
  const stockLength = (family: string) =>
    chosen.find((each) => each.family === family)?.length ?? usualStock;
  return {
    pipes: pipeLines(shop.sections, stockLength),
    hoses: hoseLines(shop.sections),
    fittings: fittingLines(shop),
    wyes: wyeLines(shop, tree),
    gates: gateLines(shop),
    changes: changeLines(shop, tree),
  };
}
