// What a decision comes to: plain data that a worker can send, and the edit of the document that it
// stands for. Applying the edit and solving the document gives the figures that stood beside it.

import type { Collector } from '../schema/collector-schema.ts';
import type { Drop } from '../schema/drop-schema.ts';
import type { Fitting } from '../schema/fitting-schema.ts';
import type { Pipe, Section, SectionJoin } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { branchOff, type NewBranch, addBranch } from '../edits/branch-off.ts';
import { changed, type ShopEdit } from '../edits/change.ts';
import { setPort } from '../edits/edit-drop.ts';
import { setFittings, setLength, setPipe } from '../edits/edit-section.ts';
import { freshId } from '../edits/fresh-id.ts';
import { freshName } from '../edits/fresh-name.ts';
import { hoseNameOf, pipeNameOf } from '../edits/name-drop.ts';
import { insertUpstream, sectionWith } from '../edits/insert-section.ts';
import { pipeNumbers, pipeWord } from '../pipe-of.ts';

/** Which drop is to reach further: one that is there, or a new one and where it branches off. */
export type RunTarget =
  | { readonly kind: 'existing'; readonly drop: string }
  | {
      readonly kind: 'new';
      /** Id of the section that it joins. */
      readonly section: string;
      /** Length of the part of that section upstream of the new wye [m]; undefined for its end. */
      readonly upstreamLength: number | undefined;
      readonly drop: Omit<Drop, 'into'>;
      readonly join: SectionJoin;
    };

/** A run that is to be added: which drop, of what pipe, with what bends. */
export interface AddedRun {
  readonly target: RunTarget;
  readonly pipe: Pipe;
  /** How far a hose is pushed together [-] */
  readonly compression?: number;
  readonly fittings: readonly Fitting[];
}

/** The pipe of one section. */
export interface SectionPipe {
  readonly section: string;
  readonly pipe: Pipe;
}

/** What one row of a decision stands for. */
export type Choice =
  /** An added run of a length [m]. */
  | { readonly kind: 'run'; readonly run: AddedRun; readonly length: number }
  | { readonly kind: 'pipes'; readonly pipes: readonly SectionPipe[] }
  | { readonly kind: 'collector'; readonly collector: Collector };

/**
 * The edit that takes a choice over into the document.
 *
 * @param choice - a row of a decision
 * @returns the edit
 */
export function editOf(choice: Choice): ShopEdit {
  switch (choice.kind) {
    case 'run':
      return addRun(choice.run, choice.length);
    case 'pipes':
      return (shop) =>
        choice.pipes.reduce((all, { section, pipe }) => setPipe(section, pipe)(all), shop);
    case 'collector':
      return (shop) => changed(shop, { collector: choice.collector });
    default:
      return choice satisfies never;
  }
}

/**
 * Id of the section that an added run lengthens or puts in, once it is in the document.
 *
 * @param shop - the shop before it
 * @param run - the run
 * @returns the id
 */
export function addedSectionId(shop: Shop, { target, pipe, compression }: AddedRun): string {
  const taken = shop.sections.map(({ id }) => id);
  if (target.kind === 'new') return freshId(target.drop.name, taken);
  const drop = dropWith(shop, target.drop);
  const own = sectionWith(shop, drop.into);
  return continues(own, pipe, compression) ? own.id : freshId(`${drop.id}-run`, taken);
}

/**
 * Id of the drop that an added run belongs to.
 *
 * @param target - the drop that is there, or the new one
 * @returns the id
 */
export function runDropId(target: RunTarget): string {
  return target.kind === 'existing' ? target.drop : target.drop.id;
}

/**
 * Adds a run. The machine, its hood, its port and its gate go to the new open end. A run of the very
 * pipe that is there lengthens that section; another one becomes a section of its own.
 */
function addRun(run: AddedRun, length: number): ShopEdit {
  return (shop) => {
    const { target, pipe, fittings, compression } = run;
    const id = addedSectionId(shop, run);
    const name = target.kind === 'new' ? target.drop.name : dropWith(shop, target.drop).name;
    const wish =
      target.kind === 'new' ? runNameOf(name, pipe) : `${pipeWord(pipe)} added to ${name}`;
    const taken = shop.sections.flatMap((each) => each.name ?? []);
    const section = changed<NewBranch['section']>(
      { id, name: freshName(wish, taken), pipe, length, fittings },
      { compression },
    );
    if (target.kind === 'new') {
      const { drop, join, upstreamLength } = target;
      const branch: NewBranch = { section, drop, join };
      if (upstreamLength === undefined) return addBranch(target.section, branch)(shop);
      const upstreamId = freshId(`${target.section}-far`, [...shop.sections.map((s) => s.id), id]);
      return branchOff(target.section, upstreamLength, upstreamId, branch)(shop);
    }
    const drop = dropWith(shop, target.drop);
    const own = sectionWith(shop, drop.into);
    if (id !== own.id) return insertUpstream(own.id, section)(keepPort(shop, drop, own, pipe));
    const longer = setLength(id, own.length + length)(shop);
    return setFittings(id, [...own.fittings, ...fittings])(longer);
  };
}

/** The port of a machine stays as wide as it was when another pipe comes to it. */
function keepPort(shop: Shop, drop: Drop, own: Section, pipe: Pipe): Shop {
  const before = pipeNumbers(own.pipe)?.diameter;
  if (drop.port !== undefined || before === pipeNumbers(pipe)?.diameter) return shop;
  return setPort(drop.id, before, drop.transition)(shop);
}

function continues(own: Section, pipe: Pipe, compression: number | undefined): boolean {
  return (own.compression ?? 0) === (compression ?? 0) && samePipe(own.pipe, pipe);
}

/**
 * Whether two pipes are the same as the document states them.
 *
 * @param a - a pipe
 * @param b - another
 * @returns true where they are
 */
export function samePipe(a: Pipe, b: Pipe): boolean {
  if (a.kind === 'catalogue' && b.kind === 'catalogue') {
    return a.family === b.family && a.size === b.size && a.roughness === b.roughness;
  }
  if (a.kind === 'catalogue' || b.kind === 'catalogue') return false;
  return a.diameter === b.diameter && a.roughness === b.roughness;
}

function dropWith(shop: Shop, id: string): Drop {
  const drop = shop.drops.find((each) => each.id === id);
  if (drop === undefined) throw new RangeError(`no drop has the id ${id}`);
  return drop;
}

function runNameOf(drop: string, pipe: Pipe): string {
  return pipeWord(pipe) === 'hose' ? hoseNameOf(drop) : pipeNameOf(drop);
}
