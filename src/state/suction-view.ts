// Where the suction goes on one drop's way, as the plot shows it: in the reader's units and words.

import { lossSentence } from '../shop/loss-shares.ts';
import { type PathPart, type PathStep, pathLosses } from '../shop/path-losses.ts';
import { partWords } from '../shop/path-words.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { sectionLabelInside } from '../shop/section-label.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import type { StateReport } from '../shop/state-report.ts';
import { worstOff } from '../shop/worst-off.ts';
import { formatQuantity } from '../units/format.ts';
import { type UnitSystem, unitLabel } from '../units/quantity.ts';
import type { Part } from './selected-part.ts';

/** One part on the way. Suctions are positive where the pressure is below that of the room. */
export interface SuctionStep {
  readonly words: string;
  /** Whether the loss comes bit by bit along a length, or at one place. */
  readonly comes: 'gradually' | 'at once';
  /** Whether it begins another section. */
  readonly begins: boolean;
  readonly loss: string;
  readonly share: string;
  /** Of all that is lost on the way [-] */
  readonly part: number;
  /** Total suction after it [Pa] */
  readonly total: number;
  /** Static suction after it [Pa] */
  readonly static: number;
  readonly totalText: string;
  readonly staticText: string;
}

/** A drop that can be chosen. */
export interface DropChoice {
  readonly id: string;
  readonly name: string;
  readonly isOpen: boolean;
}

/** The way of one drop, ready to be drawn. */
export interface SuctionView {
  readonly drops: readonly DropChoice[];
  /** The drop whose way is shown; undefined where none is open and none selected. */
  readonly drop: DropChoice | undefined;
  readonly sentence: string;
  readonly steps: readonly SuctionStep[];
  readonly unit: string;
}

/**
 * The way of the selected drop; of the one that is worst off where none is selected.
 *
 * @param shop - names and parts
 * @param model - the shop, ready to be balanced
 * @param report - one state of its gates
 * @param selection - what is looked at
 * @param system - the units to speak in
 * @returns the way in the reader's units
 */
export function suctionView(
  shop: Shop,
  model: ShopModel,
  report: StateReport,
  selection: Part | undefined,
  system: UnitSystem,
): SuctionView {
  const drops = shop.drops.map(({ id, name }, i) => ({
    id,
    name,
    isOpen: report.drops[i]!.travel > 0,
  }));
  const id = dropInQuestion(model, report, selection);
  const drop = drops.find((each) => each.id === id);
  const unit = unitLabel('pressure', system);
  const steps = drop === undefined ? [] : pathLosses(shop, model, report, drop.id);
  if (drop === undefined || steps.length === 0) {
    const sentence = drop === undefined ? 'Nothing is open: no air moves.' : 'No air moves.';
    return { drops, drop, sentence, steps: [], unit };
  }
  return {
    drops,
    drop,
    sentence: lossSentence(drop.isOpen ? drop.name : `${drop.name}, shut`, steps, system),
    steps: stepViews(shop, steps, system),
    unit,
  };
}

/** The selected drop; of those whose air passes a selected section, or of all, the worst off. */
function dropInQuestion(
  { ducts, sectionIds }: ShopModel,
  report: StateReport,
  selection: Part | undefined,
): string | undefined {
  if (selection?.kind === 'drop') return selection.id;
  const section = selection ? sectionIds.indexOf(selection.id) : -1;
  if (section < 0) return worstOff(report)?.id;
  const passing = report.drops.filter((_, i) => ducts.drops[i]!.way.includes(section));
  return (worstOff({ drops: passing }) ?? (passing.length === 1 ? passing[0] : worstOff(report)))
    ?.id;
}

function stepViews(shop: Shop, steps: readonly PathStep[], system: UnitSystem): SuctionStep[] {
  const all = steps.reduce((sum, { loss }) => sum + loss, 0);
  const pressure = (si: number) => formatQuantity('pressure', system, si).number;
  return steps.map(({ section, part, loss, totalPressure, staticPressure }, i) => ({
    words: wordsOf(shop, part, system),
    comes: part.kind === 'pipe' || part.kind === 'hose' ? 'gradually' : 'at once',
    begins: i > 0 && steps[i - 1]?.section !== section,
    loss: pressure(loss),
    share: `${formatQuantity('fraction', 'us', Math.round((100 * loss) / all) / 100).number}\u2009%`,
    part: loss / all,
    total: -totalPressure,
    static: -staticPressure,
    totalText: pressure(-totalPressure),
    staticText: pressure(-staticPressure),
  }));
}

function wordsOf(shop: Shop, part: PathPart, system: UnitSystem): string {
  const words = partWords(part, system);
  if (part.kind !== 'wye') return words;
  const into = shop.sections.find(({ id }) => id === part.into);
  return into === undefined ? words : `wye into ${sectionLabelInside(into)}`;
}
