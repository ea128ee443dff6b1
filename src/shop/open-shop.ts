// Opens a shop document: text or JSON in, a shop or readable problems out. Never throws on a file.
// First the text, then format and version, then the shape, then what the parts say of one another.

import { checkCarryingRange } from './opening/check-carrying-range.ts';
import { checkCurve } from './opening/check-curve.ts';
import { checkEnds } from './opening/check-ends.ts';
import { checkFreeEnds } from './opening/check-free-ends.ts';
import { checkGateSets } from './opening/check-gate-sets.ts';
import { checkIds } from './opening/check-ids.ts';
import { checkJoins } from './opening/check-joins.ts';
import { checkLosses } from './opening/check-losses.ts';
import { checkPurchase } from './opening/check-purchase.ts';
import { checkTables } from './opening/check-tables.ts';
import { checkTree } from './opening/check-tree.ts';
import { issueProblems } from './opening/issue-problems.ts';
import { CURVE_HISTORY, type RawDocument, SHOP_HISTORY } from './opening/migrations.ts';
import { firstProblems, type Problem } from './opening/problem.ts';
import { type ReadDocument, readDocument, readJson } from './opening/read-document.ts';
import { type Shop, shopSchema } from './schema/shop-schema.ts';
import { type SectionTree, sectionTree } from './section-tree.ts';

/** How opening a shop ended. */
export type OpenedShop =
  | { readonly kind: 'opened'; readonly shop: Shop }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Opens a shop from the text of a file.
 *
 * @param text - the text of the file
 * @returns the shop, or what is wrong with the file and where
 */
export function openShop(text: string): OpenedShop {
  const json = readJson(text);
  return json.kind === 'refused' ? json : openShopDocument(json.value);
}

/**
 * Opens a shop from a JSON value, as it comes from a store or a link.
 *
 * @param value - any JSON value
 * @returns the shop, or what is wrong with it and where
 */
export function openShopDocument(value: unknown): OpenedShop {
  const read = readUpToDate(value);
  if (read.kind === 'refused') return read;
  const parsed = shopSchema.safeParse(read.document);
  const problems = parsed.success
    ? checkShop(parsed.data)
    : issueProblems(shopSchema, read.document, parsed.error.issues);
  if (!parsed.success || problems.length > 0) {
    return { kind: 'refused', problems: firstProblems(problems) };
  }
  return { kind: 'opened', shop: parsed.data };
}

/** What the checks of the ducts read. */
const DUCTS = ['sections', 'drops', 'gateSets', 'air'] as const;

/**
 * What is wrong with a shop whose parts have the right shape.
 *
 * @param shop - the shop
 * @param known - a shop in order; what is the very same in both is not looked at again
 * @returns the problems, none if the shop is in order
 */
export function checkShop(shop: Shop, known?: Shop): Problem[] {
  const hasNewDucts = DUCTS.some((key) => shop[key] !== known?.[key]);
  const tree = hasNewDucts ? sectionTree(shop) : undefined;
  const problems = [
    ...checkCarryingRange(shop),
    ...checkCurve(shop.collector.curve, ['collector', 'curve']),
    ...checkPurchase(shop),
    ...(tree ? checkDucts(shop, tree) : []),
  ];
  return problems.length > 0 || !tree ? problems : checkFreeEnds(shop, tree);
}

function checkDucts(shop: Shop, tree: SectionTree): Problem[] {
  return [
    ...checkIds(shop),
    ...checkTree(shop, tree),
    ...checkEnds(shop, tree),
    ...checkJoins(shop, tree),
    ...checkGateSets(shop),
    ...checkTables(shop),
    ...checkLosses(shop, tree),
  ];
}

/** The shop and the curve inside it each have a version; both are brought up to date. */
function readUpToDate(value: unknown): ReadDocument {
  const shop = readDocument(value, SHOP_HISTORY);
  if (shop.kind === 'refused') return shop;
  const collector = shop.document['collector'];
  if (!isObject(collector) || !isObject(collector['curve'])) return shop;
  const curve = readDocument(collector['curve'], CURVE_HISTORY);
  if (curve.kind === 'refused') {
    const problems = curve.problems.map(({ place, message }) => ({
      place: `collector.curve.${place}`,
      message,
    }));
    return { kind: 'refused', problems };
  }
  const document = { ...shop.document, collector: { ...collector, curve: curve.document } };
  return { kind: 'read', document };
}

function isObject(value: unknown): value is RawDocument {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
