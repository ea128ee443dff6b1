// New pipe and new drops before anything is said of them: like what they are put beside.

import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import type { NewBranch } from '../../shop/edits/branch-off.ts';
import { freshId } from '../../shop/edits/fresh-id.ts';
import { freshName } from '../../shop/edits/fresh-name.ts';
import type { NewSection } from '../../shop/edits/insert-section.ts';
import { hoseNameOf, pipeNameOf } from '../../shop/edits/name-drop.ts';
import { pipeNumbers, pipeWord } from '../../shop/pipe-of.ts';
import type { Pipe, Section } from '../../shop/schema/section-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { USUAL_HOOD } from '../../shop/started-shop.ts';
import { fromDisplay, type UnitSystem } from '../../units/quantity.ts';

const HOSE = 'hose-wire-helix';
const PIPE = 'galvanised-spiral';

/** A length to begin with, round in either system: 3 ft or 1 m, and twice that for a branch [m]. */
function beginLength(system: UnitSystem): number {
  return fromDisplay('length', system, system === 'us' ? 3 : 1);
}

/**
 * Pipe to be put in beside a section, of the same kind.
 *
 * @param shop - the shop
 * @param beside - the section
 * @param system - the units, for a round length
 * @returns the new section
 */
export function newPipe(shop: Shop, beside: Section, system: UnitSystem): NewSection {
  const name = freshName(beside.name ?? 'pipe', namesOf(shop));
  return {
    id: freshId(name, idsOf(shop)),
    name,
    pipe: beside.pipe,
    length: beginLength(system),
    fittings: [],
  };
}

/**
 * Hose to be put in at a drop, of the size nearest to its pipe.
 *
 * @param shop - the shop
 * @param drop - name of the drop
 * @param beside - the pipe that it feeds
 * @param system - the units, for a round length
 * @returns the new section
 */
export function newHose(shop: Shop, drop: string, beside: Section, system: UnitSystem): NewSection {
  const name = freshName(hoseNameOf(drop), namesOf(shop));
  return {
    id: freshId(name, idsOf(shop)),
    name,
    pipe: likePipe(HOSE, beside.pipe),
    length: beginLength(system),
    fittings: [],
  };
}

/**
 * A branch with a drop, to be joined to a section; never of hose.
 *
 * @param shop - the shop
 * @param beside - the section
 * @param system - the units, for a round length
 * @returns the new branch
 */
export function newBranch(shop: Shop, beside: Section, system: UnitSystem): NewBranch {
  const dropNames = shop.drops.map(({ name }) => name);
  const name = freshName('New drop', dropNames);
  return {
    section: {
      id: freshId(name, idsOf(shop)),
      name: freshName(pipeNameOf(name), namesOf(shop)),
      pipe: pipeWord(beside.pipe) === 'hose' ? likePipe(PIPE, beside.pipe) : beside.pipe,
      length: 2 * beginLength(system),
      fittings: [],
    },
    drop: {
      id: freshId(
        name,
        shop.drops.map(({ id }) => id),
      ),
      name,
      hood: USUAL_HOOD,
      gate: { travel: 1 },
    },
    join: { kind: 'momentum', angle: 45 },
  };
}

/**
 * The size of a family that is nearest to a pipe's inside diameter.
 *
 * @param familyId - a family of the catalogue
 * @param pipe - the pipe
 * @returns a pipe of that family
 * @throws RangeError if the catalogue has no such family
 */
export function likePipe(familyId: string, pipe: Pipe): Pipe {
  const diameter = pipeNumbers(pipe)?.diameter ?? 0;
  const sizes = PIPE_FAMILIES.find(({ id }) => id === familyId)?.sizes ?? [];
  const off = (size: { readonly diameter: number }) => Math.abs(size.diameter - diameter);
  const [nearest] = sizes.toSorted((a, b) => off(a) - off(b));
  if (nearest === undefined) throw new RangeError(`the catalogue has no family ${familyId}`);
  return { kind: 'catalogue', family: familyId, size: nearest.id };
}

function idsOf(shop: Shop): string[] {
  return shop.sections.map(({ id }) => id);
}

function namesOf(shop: Shop): string[] {
  return shop.sections.flatMap(({ name }) => name ?? []);
}
