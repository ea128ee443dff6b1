// What can be asked of a shop beside what it is today, and the study that answers it. Questions and
// answers are plain data, so that they can go to a worker and back. (Over 200 lines: every question stands
// beside its study, so that none is forgotten.)

import type { AddedRun } from '../../shop/decisions/choice.ts';
import { collectorDoubtStudy } from '../../shop/decisions/collector-doubt.ts';
import {
  type CollectorsOverDucts,
  collectorsOverDucts,
} from '../../shop/decisions/collectors-over-ducts.ts';
import { type CollectorRow, collectorStudy } from '../../shop/decisions/collectors.ts';
import type { DoubtOptions } from '../../shop/decisions/doubt.ts';
import type { DoubtedMains } from '../../shop/decisions/doubted-mains.ts';
import { mainDoubtStudy } from '../../shop/decisions/main-doubt.ts';
import { type MainSizes, mainSizeStudy } from '../../shop/decisions/main-sizes.ts';
import { type SetCost, reachCosts } from '../../shop/decisions/reach-costs.ts';
import { type ReachDoubt, reachDoubtStudy } from '../../shop/decisions/reach-doubt.ts';
import { type ReachSizes, reachSizeStudy } from '../../shop/decisions/reach-sizes.ts';
import { type Reach, reachStudy } from '../../shop/decisions/reach.ts';
import { type TaperedMain, taperedMainStudy } from '../../shop/decisions/tapered-main.ts';
import { dropIn } from '../../shop/decisions/solved-states.ts';
import { type Travels, travelsWhenOpen } from '../../shop/gate-state.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { modelOf } from '../../shop/shop-model.ts';
import { type DropReport, stateReport } from '../../shop/state-report.ts';
import { type Study, within } from '../../study/progress.ts';
import type { Candidate, CurveOrigin } from './candidates.ts';
import { type ToldCollector, toldCollectors, type ToldMains, toldMains } from './told-doubt.ts';

/** How far a drop reaches with an added run, and what a length of it costs. */
export interface ReachQuestion {
  readonly shop: Shop;
  readonly run: AddedRun;
  /** Family of pipe in whose sizes the run is tried. */
  readonly family: string;
  /** The length that is wanted [m] */
  readonly length: number;
  /** Greatest length to look at, above 0 [m] */
  readonly longest: number;
  /** Ids of the drops that are open. */
  readonly open: readonly string[];
}

export interface ReachAnswer {
  readonly reach: Reach;
  readonly sizes: ReachSizes;
  /** What the wanted length costs in each saved gate set. */
  readonly costs: readonly SetCost[];
}

/** What a main of another size does. */
export interface MainQuestion {
  readonly shop: Shop;
  /** Ids of the sections that count as the main. */
  readonly sections: readonly string[];
  readonly family: string;
}

/** The best main of several sizes. */
export interface TaperedQuestion extends MainQuestion {
  /** Ids of the sizes that a section may have, of one row. */
  readonly sizes: readonly string[];
}

/** Every drop alone in several shops. */
export interface AloneQuestion {
  readonly shops: readonly Shop[];
}

/** One drop report for each drop of each shop, in the order of the documents. */
export type AloneAnswer = readonly (readonly DropReport[])[];

/** How sure an answer is: a question again with everything a little off. */
export type Doubting<Question> = Question & { readonly doubt: DoubtOptions };

/** The main in some sizes, as the answer on the main has them. */
export interface MainDoubtQuestion {
  readonly shop: Shop;
  readonly sizes: DoubtedMains;
}

/** Collectors on the same ducts. */
export interface CollectorQuestion {
  readonly shop: Shop;
  readonly candidates: readonly Candidate[];
}

/** A collector by the name that it has among the others, and whose its curve is. */
export interface ComparedCollector extends CollectorRow {
  readonly origin: CurveOrigin;
}

export interface CollectorAnswer {
  readonly rows: readonly ComparedCollector[];
}

/** The same collectors over the curve of the ducts, with the gates at some places. */
export interface CollectorPictureQuestion extends CollectorQuestion {
  /** What is open, in words. */
  readonly opened: string;
  readonly travels: Travels;
}

interface Subjects {
  readonly reach: { readonly asked: ReachQuestion; readonly answered: ReachAnswer };
  readonly main: { readonly asked: MainQuestion; readonly answered: MainSizes };
  readonly 'tapered main': { readonly asked: TaperedQuestion; readonly answered: TaperedMain };
  readonly collectors: { readonly asked: CollectorQuestion; readonly answered: CollectorAnswer };
  readonly 'collector picture': {
    readonly asked: Doubting<CollectorPictureQuestion>;
    readonly answered: CollectorsOverDucts;
  };
  readonly 'reach doubt': {
    readonly asked: Doubting<ReachQuestion>;
    readonly answered: ReachDoubt;
  };
  readonly 'main doubt': {
    readonly asked: Doubting<MainDoubtQuestion>;
    readonly answered: ToldMains;
  };
  readonly 'collector doubt': {
    readonly asked: Doubting<CollectorQuestion>;
    readonly answered: readonly ToldCollector[];
  };
  readonly alone: { readonly asked: AloneQuestion; readonly answered: AloneAnswer };
}

/** What a question is about. */
export type Subject = keyof Subjects;
export type QuestionOn<S extends Subject> = Subjects[S]['asked'];
export type AnswerOn<S extends Subject> = Subjects[S]['answered'];

const STUDIES: { readonly [S in Subject]: (question: QuestionOn<S>) => Study<AnswerOn<S>> } = {
  reach: studyReach,
  main: ({ shop, sections, family }) => mainSizeStudy(shop, sections, family),
  'tapered main': ({ shop, sections, family, sizes }) =>
    taperedMainStudy(shop, sections, family, { sizes }),
  collectors: studyCollectors,
  'collector picture': studyPicture,
  'reach doubt': ({ shop, run, longest, open, doubt }) =>
    reachDoubtStudy(shop, run, { ...doubt, longest, open }),
  'main doubt': studyMainDoubt,
  'collector doubt': studyCollectorDoubt,
  alone: studyAlone,
};

/**
 * The study that answers a question.
 *
 * @param subject - what it is about
 * @param question - the question
 * @returns the study, not begun
 */
export function studyOn<S extends Subject>(
  subject: S,
  question: QuestionOn<S>,
): Study<AnswerOn<S>> {
  return STUDIES[subject](question);
}

function* studyReach(question: ReachQuestion): Study<ReachAnswer> {
  const { shop, run, family, length, longest, open } = question;
  const options = { longest, open };
  const reach = yield* within(reachStudy(shop, run, options), 0, 12);
  const sizes = yield* portion(reachSizeStudy(shop, run, family, length, options), 1, 12);
  return { reach, sizes, costs: reachCosts(shop, run, length) };
}

function* studyCollectors({ shop, candidates }: CollectorQuestion): Study<CollectorAnswer> {
  const rows = yield* collectorStudy(shop, collectorsOf(candidates));
  return {
    rows: rows.map((row, i) => {
      const { name, origin } = candidates[i]!;
      return { ...row, name, origin };
    }),
  };
}

function* studyPicture(question: Doubting<CollectorPictureQuestion>): Study<CollectorsOverDucts> {
  const { shop, candidates, travels, doubt } = question;
  const over = yield* collectorsOverDucts(shop, collectorsOf(candidates), travels, doubt);
  const named = over.collectors.map((each, i) => ({ ...each, name: candidates[i]!.name }));
  return { ...over, collectors: named };
}

function collectorsOf(candidates: readonly Candidate[]) {
  return candidates.map(({ collector }) => collector);
}

function* studyMainDoubt(question: Doubting<MainDoubtQuestion>): Study<ToldMains> {
  const { shop, sizes, doubt } = question;
  return toldMains(yield* mainDoubtStudy(shop, sizes, doubt));
}

function* studyCollectorDoubt(
  question: Doubting<CollectorQuestion>,
): Study<readonly ToldCollector[]> {
  const { shop, candidates, doubt } = question;
  return toldCollectors(yield* collectorDoubtStudy(shop, collectorsOf(candidates), doubt));
}

function* studyAlone({ shops }: AloneQuestion): Study<AloneAnswer> {
  const answer: DropReport[][] = [];
  const total = shops.reduce((sum, { drops }) => sum + drops.length, 0);
  for (const shop of shops) {
    const model = modelOf(shop);
    const reports: DropReport[] = [];
    for (const { id } of shop.drops) {
      reports.push(dropIn(stateReport(model, travelsWhenOpen(shop.drops, [id])), id));
      yield { done: answer.reduce((sum, each) => sum + each.length, reports.length), total };
    }
    answer.push(reports);
  }
  return answer;
}

/** A study that stands for the steps from one to the last of all. */
function* portion<Result>(study: Study<Result>, from: number, total: number): Study<Result> {
  for (;;) {
    const step = study.next();
    if (step.done === true) return step.value;
    yield { done: from + ((total - from) * step.value.done) / step.value.total, total };
  }
}
