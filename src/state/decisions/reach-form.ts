// What a reader says of a run that is to be added, and the run that it stands for.

import { pipeWord } from '../../shop/pipe-of.ts';
import { freshId } from '../../shop/edits/fresh-id.ts';
import type { AddedRun } from '../../shop/decisions/choice.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Pipe, Section } from '../../shop/schema/section-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { USUAL_HOOD } from '../../shop/started-shop.ts';
import { fromDisplay, type UnitSystem } from '../../units/quantity.ts';
import type { ReachQuestion } from './question.ts';

/** Stands for a drop that isn't there yet. */
export const NEW_DROP = '';
/** Stands for no gate set: the drop alone is open. */
export const ALONE = '';
/** Sizes are tried in this family where the run's pipe is of none. */
const USUAL_FAMILY = 'galvanised-spiral';

/** Runs are looked at up to so much: 100 ft or 30 m [m]. */
export const LONGEST_RUN = { us: 30.48, metric: 30 } as const;

export interface ReachForm {
  /** Id of the drop, or {@link NEW_DROP}. */
  readonly drop: string;
  /** What a new drop is called, what it needs [m³/s], and where it branches off. */
  readonly name: string;
  readonly need: number | undefined;
  readonly section: string;
  /** From the far end of that section to the new wye [m]; undefined for the middle. */
  readonly fromFarEnd: number | undefined;
  readonly pipe: Pipe;
  /** How far a hose is pushed together [-] */
  readonly compression: number;
  /** The length that is wanted [m] */
  readonly length: number;
  readonly fittings: readonly Fitting[];
  /** Id of the gate set that is open, or {@link ALONE}. */
  readonly gateSet: string;
}

/**
 * The form to begin with: ten feet or three metres more of the pipe that is there.
 *
 * @param shop - the shop
 * @param drop - id of a drop, or of none
 * @param system - the units, for a round length
 * @returns the form
 */
export function beginForm(shop: Shop, drop: string, system: UnitSystem): ReachForm {
  const into = shop.drops.find(({ id }) => id === drop)?.into;
  const main = shop.sections.find(({ into: next }) => !shop.sections.some(({ id }) => id === next));
  const section = shop.sections.find(({ id }) => id === into) ?? main ?? shop.sections[0]!;
  return {
    drop,
    name: 'New drop',
    need: undefined,
    section: (main ?? section).id,
    fromFarEnd: undefined,
    pipe: section.pipe,
    compression: section.compression ?? 0,
    length: fromDisplay('length', system, system === 'us' ? 10 : 3),
    fittings: [],
    gateSet: ALONE,
  };
}

/**
 * The form as it holds for a shop that may have changed: what it names and is there no more gives way.
 *
 * @param form - as it was filled in
 * @param shop - the shop as it is now
 * @returns the form; the very same where all is there
 */
export function heldForm(form: ReachForm, shop: Shop): ReachForm {
  const has = (list: readonly { readonly id: string }[], id: string) =>
    list.some((each) => each.id === id);
  const isThere =
    (form.drop === NEW_DROP || has(shop.drops, form.drop)) &&
    has(shop.sections, form.section) &&
    (form.gateSet === ALONE || has(shop.gateSets, form.gateSet));
  if (isThere) return form;
  return {
    ...form,
    drop: has(shop.drops, form.drop) ? form.drop : shop.drops[0]!.id,
    section: has(shop.sections, form.section) ? form.section : shop.sections[0]!.id,
    gateSet: has(shop.gateSets, form.gateSet) ? form.gateSet : ALONE,
  };
}

/** The section that a new drop branches off. */
export function joinedSection(form: ReachForm, shop: Shop): Section {
  const section = shop.sections.find(({ id }) => id === form.section);
  if (section === undefined) throw new RangeError(`no section has the id ${form.section}`);
  return section;
}

/**
 * The question that a form asks.
 *
 * @param form - as it holds for the shop
 * @param shop - the shop
 * @param system - the units, for a round greatest length
 * @returns the question
 */
export function reachQuestion(form: ReachForm, shop: Shop, system: UnitSystem): ReachQuestion {
  const run = addedRun(form, shop);
  const { target, pipe } = run;
  const drop = target.kind === 'new' ? target.drop.id : target.drop;
  const set = shop.gateSets.find(({ id }) => id === form.gateSet)?.open ?? [];
  return {
    shop,
    run,
    family: pipe.kind === 'catalogue' ? pipe.family : USUAL_FAMILY,
    length: form.length,
    longest: LONGEST_RUN[system],
    open: set.includes(drop) ? set : [...set, drop],
  };
}

function addedRun(form: ReachForm, shop: Shop): AddedRun {
  const { pipe, fittings, compression } = form;
  const isPushed = compression > 0 && pipeWord(pipe) === 'hose';
  const run = { pipe, fittings, ...(isPushed ? { compression } : {}) };
  if (form.drop !== NEW_DROP) return { ...run, target: { kind: 'existing', drop: form.drop } };
  const section = joinedSection(form, shop);
  const { name, need } = form;
  const id = freshId(
    name,
    shop.drops.map((drop) => drop.id),
  );
  const hood = { hood: USUAL_HOOD, gate: { travel: 1 } };
  return {
    ...run,
    target: {
      kind: 'new',
      section: section.id,
      upstreamLength: Math.min(form.fromFarEnd ?? section.length / 2, section.length),
      drop: { id, name, ...hood, ...(need === undefined ? {} : { need }) },
      join: { kind: 'momentum', angle: 45 },
    },
  };
}
