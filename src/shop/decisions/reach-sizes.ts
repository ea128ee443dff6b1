// A longer run in every size of a family of pipe: which size reaches furthest, and what each gives at
// a length that is wanted.

import { PIPE_FAMILIES, type PipeSize } from '../../duct/catalogue.ts';
import { type Study, within } from '../../study/progress.ts';
import { travelsWhenOpen } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';
import { type DropReport, stateReport } from '../state-report.ts';
import { type AddedRun, type Choice, editOf, runDropId } from './choice.ts';
import { type Reach, type ReachOptions, reachStudy } from './reach.ts';
import { dropIn, isServed } from './solved-states.ts';

/** A run in one size. */
export interface ReachSize {
  readonly size: PipeSize;
  readonly reach: Reach;
  /** The drop at the wanted length, as the solver says it. */
  readonly drop: DropReport;
  readonly choice: Choice;
}

/** A run in every size. */
export interface ReachSizes {
  /** The wanted length [m] */
  readonly length: number;
  readonly sizes: readonly ReachSize[];
  /** Which of them is best [-]; undefined where none serves the drop at any length */
  readonly best: number | undefined;
}

/**
 * A run in every size of a family. The best size is one that serves the drop at the wanted length,
 * with the most room in whatever is nearest to its limit; where none does, the one that reaches
 * furthest.
 *
 * @param shop - a shop in order
 * @param run - the run; its pipe is replaced
 * @param familyId - a family of the catalogue
 * @param length - the length that is wanted, 0 or more [m]
 * @param options - greatest length and open gates
 * @returns a study of all sizes, in the order of the catalogue
 * @throws RangeError where there is no such family
 */
export function* reachSizeStudy(
  shop: Shop,
  run: AddedRun,
  familyId: string,
  length: number,
  options: ReachOptions = {},
): Study<ReachSizes> {
  const family = PIPE_FAMILIES.find(({ id }) => id === familyId);
  if (family === undefined) throw new RangeError(`no family of pipe is called ${familyId}`);
  const sizes: ReachSize[] = [];
  for (const [i, size] of family.sizes.entries()) {
    const pipe = { kind: 'catalogue', family: familyId, size: size.id } as const;
    const sized = { ...run, pipe };
    const reach = yield* within(reachStudy(shop, sized, options), i, family.sizes.length);
    const choice = { kind: 'run', run: sized, length } as const;
    sizes.push({ size, reach, drop: solvedDrop(shop, choice, reach.open), choice });
  }
  yield { done: family.sizes.length, total: family.sizes.length };
  return { length, sizes, best: bestOf(sizes, shop.carryingRange.low) };
}

function solvedDrop(
  shop: Shop,
  choice: Extract<Choice, { readonly kind: 'run' }>,
  open: readonly string[],
): DropReport {
  const edited = editOf(choice)(shop);
  const report = stateReport(modelOf(edited), travelsWhenOpen(edited.drops, open));
  return dropIn(report, runDropId(choice.run.target));
}

function bestOf(sizes: readonly ReachSize[], low: number): number | undefined {
  const room = ({ drop }: ReachSize) =>
    Math.min(
      low > 0 ? drop.slowest.velocity / low : Number.POSITIVE_INFINITY,
      drop.need === null || drop.need === 0 ? Number.POSITIVE_INFINITY : drop.flow / drop.need,
    );
  const rank = sizes.map((size, index) => ({ index, size }));
  const serving = rank.filter(({ size }) => isServed(size.drop));
  if (serving.length > 0) return serving.toSorted((a, b) => room(b.size) - room(a.size))[0]!.index;
  const furthest = rank.toSorted((a, b) => b.size.reach.length - a.size.reach.length)[0];
  return furthest !== undefined && furthest.size.reach.length > 0 ? furthest.index : undefined;
}
