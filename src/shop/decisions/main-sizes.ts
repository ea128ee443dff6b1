// What a main of another size does: every drop alone and every saved gate set, solved in full for each
// size of a family, with a verdict on each drop.

import { PIPE_FAMILIES, type PipeSize } from '../../duct/catalogue.ts';
import type { Study } from '../../study/progress.ts';
import { travelsWhenOpen, usualStates } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf, type ShopModel } from '../shop-model.ts';
import { stateReport } from '../state-report.ts';
import { type Choice, editOf, samePipe, type SectionPipe } from './choice.ts';
import { resized } from './main-sections.ts';
import { type MainFigures, type MainState, mainState } from './main-state.ts';
import { type DropVerdict, judgeDrop } from './main-verdict.ts';

/** One size of the main. */
export interface MainRow extends MainFigures {
  readonly size: PipeSize;
  /** Whether every section of the main is of that pipe already. */
  readonly isToday: boolean;
  /** What it does to each drop, in the order of the document. */
  readonly drops: readonly DropVerdict[];
  readonly choice: Choice;
}

/** The main in every size. */
export interface MainSizes {
  readonly sections: readonly string[];
  readonly family: string;
  readonly today: MainFigures;
  readonly rows: readonly MainRow[];
}

/**
 * The main in every size of a family.
 *
 * @param shop - a shop in order
 * @param sections - ids of the sections that count as the main
 * @param familyId - a family of the catalogue
 * @returns a study of all sizes, in the order of the catalogue
 * @throws RangeError where there is no such family
 */
export function* mainSizeStudy(
  shop: Shop,
  sections: readonly string[],
  familyId: string,
): Study<MainSizes> {
  const family = PIPE_FAMILIES.find(({ id }) => id === familyId);
  if (family === undefined) throw new RangeError(`no family of pipe is called ${familyId}`);
  const states = usualStates(shop);
  const total = states.length + family.sizes.length * (states.length + shop.drops.length);
  let done = 0;
  function* figuresOf(edited: Shop, model: ShopModel): Study<MainFigures> {
    const solved: MainState[] = [];
    for (const state of states) {
      const report = stateReport(model, travelsWhenOpen(edited.drops, state.open));
      solved.push(mainState(edited, state, report, sections));
      done += 1;
      yield { done, total };
    }
    return { states: solved };
  }
  const todayModel = modelOf(shop);
  const today = yield* figuresOf(shop, todayModel);
  const rows: MainRow[] = [];
  for (const size of family.sizes) {
    const pipes = mainPipes(shop, sections, familyId, size.id);
    const choice = { kind: 'pipes', pipes } as const;
    const edited = editOf(choice)(shop);
    const model = modelOf(edited);
    const figures = yield* figuresOf(edited, model);
    const drops: DropVerdict[] = [];
    for (const drop of shop.drops.keys()) {
      drops.push(judgeDrop(shop, drop, today, figures, model));
      done += 1;
      yield { done, total };
    }
    const isToday = edited.sections.every(({ pipe }, i) => samePipe(pipe, shop.sections[i]!.pipe));
    rows.push({ size, isToday, ...figures, drops, choice });
  }
  return { sections, family: familyId, today, rows };
}

/**
 * The pipes of a main that is of one size throughout.
 *
 * @param shop - a shop in order
 * @param sections - ids of the sections that count as the main
 * @param family - a family of the catalogue
 * @param size - a size of it
 * @returns the pipe of each section
 */
export function mainPipes(
  shop: Pick<Shop, 'sections'>,
  sections: readonly string[],
  family: string,
  size: string,
): readonly SectionPipe[] {
  return sections.map((id) => {
    const section = shop.sections.find((each) => each.id === id);
    if (section === undefined) throw new RangeError(`no section has the id ${id}`);
    return { section: id, pipe: resized(section.pipe, family, size) };
  });
}
