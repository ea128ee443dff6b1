// What can be done with a section or a drop in the tree: each an edit with the words for its button
// and for what was done. An action that would change nothing is not offered.
// (A little over 200 lines: a list of short actions.)

import { addBranch, branchOff } from '../../shop/edits/branch-off.ts';
import type { ShopEdit } from '../../shop/edits/change.ts';
import { duplicateBranch } from '../../shop/edits/duplicate-branch.ts';
import { renameSection } from '../../shop/edits/edit-section.ts';
import { freshId } from '../../shop/edits/fresh-id.ts';
import { freshName } from '../../shop/edits/fresh-name.ts';
import { insertDownstream, insertUpstream, splitSection } from '../../shop/edits/insert-section.ts';
import { canMove, moveBranch, moveBranchOnto } from '../../shop/edits/move-branch.ts';
import { removeBranch, removeDrop, removeSection } from '../../shop/edits/remove-part.ts';
import { moveAmongBranches, moveDropInList, swapWithUpstream } from '../../shop/edits/reorder.ts';
import type { Drop } from '../../shop/schema/drop-schema.ts';
import type { Section } from '../../shop/schema/section-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { branchUpstream, sectionTree, wayToCollector } from '../../shop/section-tree.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { hasPart, type Part } from '../selected-part.ts';
import { newBranch, newHose, newPipe } from './new-parts.ts';
import { partLabel } from './part-label.ts';

/** Something that can be done with a part. */
export interface PartAction {
  readonly id: string;
  readonly words: string;
  readonly edit: ShopEdit;
  /** What was done, to stand beside its undo. */
  readonly done: string;
  /** Heading under which a choice of it belongs; empty for a button of its own. */
  readonly group: string;
}

/**
 * What can be done with a part.
 *
 * @param shop - the shop
 * @param part - a section or a drop of it
 * @param system - the units, for round lengths of new pipe
 * @returns the actions, those that add first
 */
export function partActions(shop: Shop, part: Part, system: UnitSystem): readonly PartAction[] {
  const section = part.kind === 'section' ? shop.sections.find(({ id }) => id === part.id) : null;
  const drop = part.kind === 'drop' ? shop.drops.find(({ id }) => id === part.id) : null;
  const all = section
    ? [...sectionActions(shop, section, system), ...moves(shop, section)]
    : drop
      ? dropActions(shop, drop, system)
      : [];
  return all.filter(({ edit }) => edit(shop) !== shop);
}

/**
 * The part to look at after an edit: the first new drop, else the first new section, else the same
 * as before, else what is given.
 *
 * @param before - the shop before the edit
 * @param after - the shop after it
 * @param part - what was looked at
 * @param otherwise - what to look at where that part is gone
 * @returns the part, or undefined
 */
export function partAfter(
  before: Shop,
  after: Shop,
  part: Part,
  otherwise: Part | undefined,
): Part | undefined {
  const newcomer = (kind: Part['kind'], old: readonly Named[], now: readonly Named[]) =>
    now.filter(({ id }) => !old.some((each) => each.id === id)).map(({ id }) => ({ kind, id }))[0];
  return (
    newcomer('drop', before.drops, after.drops) ??
    newcomer('section', before.sections, after.sections) ??
    (hasPart(after, part) ? part : otherwise)
  );
}

interface Named {
  readonly id: string;
}

function sectionActions(shop: Shop, section: Section, system: UnitSystem): PartAction[] {
  const { id } = section;
  const tree = sectionTree(shop);
  const at = tree.position.get(id) ?? -1;
  const label = partLabel(section);
  const fed = new Set(branchUpstream(tree, at).flatMap((each) => tree.drops[each] ?? []));
  const isOpenEnd = (tree.inlets[at]?.length ?? 0) === 0;
  const pipe = newPipe(shop, section, system);
  const branch = newBranch(shop, section, system);
  const upstreamId = freshId(id, [...shop.sections.map((each) => each.id), branch.section.id]);
  const next = shop.sections[tree.into[at] ?? -1];
  const drops = fed.size === 1 ? 'its drop' : `its ${fed.size} drops`;
  return [
    action('branch-off', 'Branch off halfway', `A branch joins halfway along ${label}.`, (all) =>
      named(section, upstreamId)(branchOff(id, section.length / 2, upstreamId, branch)(all)),
    ),
    action(
      'add-branch',
      'Add a branch at its upstream end',
      `A branch joins ${label}.`,
      addBranch(id, branch),
    ),
    action(
      'insert-upstream',
      'Insert pipe upstream',
      `Pipe put in upstream of ${label}.`,
      insertUpstream(id, pipe),
    ),
    action(
      'insert-downstream',
      'Insert pipe downstream',
      `Pipe put in downstream of ${label}.`,
      insertDownstream(id, pipe),
    ),
    action('split', 'Cut in two', `${label} cut in two.`, (all) =>
      named(section, upstreamId)(splitSection(id, section.length / 2, upstreamId)(all)),
    ),
    action(
      'duplicate',
      isOpenEnd ? 'Duplicate with its drop' : `Duplicate with ${drops}`,
      `${label} duplicated.`,
      duplicateBranch(id),
    ),
    action('upstream', 'Move upstream', `${label} moved upstream.`, swapWithUpstream(id)),
    action('downstream', 'Move downstream', `${label} moved downstream.`, (all) =>
      next ? swapWithUpstream(next.id)(all) : all,
    ),
    action('earlier', 'List earlier', `${label} listed earlier.`, moveAmongBranches(id, -1)),
    action('later', 'List later', `${label} listed later.`, moveAmongBranches(id, 1)),
    action('delete', 'Delete this pipe', `${label} deleted.`, removeSection(id)),
    action(
      'delete-branch',
      `Delete with ${drops}`,
      `${label} deleted with ${drops}.`,
      removeBranch(id),
    ),
  ];
}

function dropActions(shop: Shop, drop: Drop, system: UnitSystem): PartAction[] {
  const { id, name, into } = drop;
  const tree = sectionTree(shop);
  const own = shop.sections.find((section) => section.id === into);
  const way = wayToCollector(tree, tree.position.get(into) ?? -1);
  const root = way.find((at) => (tree.inlets[tree.into[at] ?? -1]?.length ?? 0) > 1) ?? way[0];
  const rootId = shop.sections[root ?? -1]?.id;
  return [
    action('hose', 'Put in a hose', `A hose put in at ${name}.`, (all) =>
      own ? insertUpstream(into, newHose(shop, name, own, system))(all) : all,
    ),
    action('duplicate', 'Duplicate with its pipe', `${name} duplicated.`, (all) =>
      rootId === undefined ? all : duplicateBranch(rootId)(all),
    ),
    action('earlier', 'List earlier', `${name} listed earlier.`, moveDropInList(id, -1)),
    action('later', 'List later', `${name} listed later.`, moveDropInList(id, 1)),
    action('delete', 'Delete with its pipe', `${name} deleted with its pipe.`, removeDrop(id)),
  ];
}

/** Where a branch can be led instead: to another wye, or into the length of another pipe. */
function moves(shop: Shop, section: Section): PartAction[] {
  const { id } = section;
  const label = partLabel(section);
  const others = shop.sections.filter((each) => canMove(shop, id, each.id));
  const isWye = (each: Section) => shop.sections.some(({ into }) => into === each.id);
  const taken = shop.sections.map((each) => each.id);
  return [
    ...others.filter(isWye).map((each) => ({
      ...action(
        `to ${each.id}`,
        partLabel(each),
        `${label} now joins ${partLabel(each)}.`,
        moveBranch(id, each.id),
      ),
      group: 'At the upstream end of',
    })),
    ...others.map((each) => {
      const upstreamId = freshId(each.id, taken);
      return {
        ...action(
          `onto ${each.id}`,
          partLabel(each),
          `${label} now joins halfway along ${partLabel(each)}.`,
          (all) => {
            const moved = moveBranchOnto(id, each.id, each.length / 2, upstreamId)(all);
            return moved === all ? all : named(each, upstreamId)(moved);
          },
        ),
        group: 'Halfway along',
      };
    }),
  ];
}

function action(id: string, words: string, done: string, edit: ShopEdit): PartAction {
  return { id, words, done, edit, group: '' };
}

/** Calls the upstream part of a section that was cut like the section, with a number. */
function named(section: Section, upstreamId: string): ShopEdit {
  const { name } = section;
  if (name === undefined) return (shop) => shop;
  return (shop) => {
    const names = shop.sections.flatMap((each) => each.name ?? []);
    return renameSection(upstreamId, freshName(name, names))(shop);
  };
}
