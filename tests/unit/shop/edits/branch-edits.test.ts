// Branches copied, moved, put in another order and taken out, on a shop small enough to be read.
import { describe, expect, it } from 'vitest';
import { duplicateBranch } from '../../../../src/shop/edits/duplicate-branch.ts';
import { setJoin } from '../../../../src/shop/edits/edit-section.ts';
import { freshName } from '../../../../src/shop/edits/fresh-name.ts';
import { insertUpstream } from '../../../../src/shop/edits/insert-section.ts';
import { canMove, moveBranch, moveBranchOnto } from '../../../../src/shop/edits/move-branch.ts';
import { removeBranch, removeDrop } from '../../../../src/shop/edits/remove-part.ts';
import {
  moveAmongBranches,
  moveDropInList,
  swapWithUpstream,
} from '../../../../src/shop/edits/reorder.ts';
import { checkShop } from '../../../../src/shop/open-shop.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { smallShop } from '../small-shop.ts';

/** Who empties into whom and by what join, as short lines. */
const runs = (shop: Shop) => {
  expect(checkShop(shop)).toEqual([]);
  return [
    ...shop.sections.map(({ id, into, join }) => {
      const how = join?.kind === 'momentum' ? join.angle : join?.coefficient;
      return `${id} > ${into}${how === undefined ? '' : ` ${how}`}`;
    }),
    ...shop.drops.map(({ id, into }) => `${id} * ${into}`),
  ];
};
const START = runs(smallShop);

describe('duplicateBranch', () => {
  it('copies what is upstream, with names and ids of its own', () => {
    const shop = duplicateBranch('saw-run')(smallShop);
    expect(runs(shop)).toEqual([
      ...START.slice(0, 4),
      'saw-run-2 > main 45',
      ...START.slice(4),
      'saw-2 * saw-run-2',
    ]);
    expect(shop.drops.map(({ name }) => name)).toEqual(['Planer', 'Band saw', 'Band saw 2']);
    expect(shop.drops[2]).toMatchObject({ need: 0.1, gate: { travel: 1 } });
    expect(shop.gateSets).toBe(smallShop.gateSets);
  });

  it('joins the copy of a straight run from the side', () => {
    const shop = duplicateBranch('planer-run')(smallShop);
    expect(runs(shop).slice(4, 6)).toEqual([
      'planer-run-2 > main 45',
      'planer-end-2 > planer-run-2',
    ]);
  });

  it('makes a wye where the branch came in alone', () => {
    const shop = duplicateBranch('planer-end')(smallShop);
    expect(runs(shop).slice(2, 5)).toEqual([
      'planer-end > planer-run 0',
      'saw-run > main 45',
      'planer-end-2 > planer-run 45',
    ]);
  });

  it('leaves the section at the collector alone', () => {
    expect(duplicateBranch('main')(smallShop)).toBe(smallShop);
  });
});

describe('moveBranch', () => {
  it('joins another wye and closes the old one up', () => {
    expect(runs(moveBranch('saw-run', 'planer-run')(smallShop))).toEqual([
      'main > collector',
      'planer-run > main',
      'planer-end > planer-run 0',
      'saw-run > planer-run 45',
      ...START.slice(4),
    ]);
  });

  it('takes on the manner of the new wye', () => {
    const wide = duplicateBranch('planer-end')(smallShop);
    const fixed = setJoin('planer-end', { kind: 'fixed', coefficient: 0.2, of: 'own' })(wide);
    expect(runs(moveBranch('saw-run', 'planer-run')(fixed))).toContain('saw-run > planer-run 0.28');
  });

  it('does nothing into itself, from a wye of one, from the collector or to a drop’s own pipe', () => {
    for (const [id, into] of [
      ['planer-run', 'planer-end'],
      ['planer-run', 'planer-run'],
      ['planer-end', 'main'],
      ['main', 'planer-run'],
      ['saw-run', 'planer-end'],
      ['saw-run', 'main'],
    ] as const) {
      expect(moveBranch(id, into)(smallShop), `${id} to ${into}`).toBe(smallShop);
    }
    expect(canMove(smallShop, 'saw-run', 'planer-end')).toBe(true);
    expect(canMove(smallShop, 'planer-end', 'main')).toBe(false);
  });
});

describe('moveBranchOnto', () => {
  it('cuts the pipe and joins there', () => {
    expect(runs(moveBranchOnto('saw-run', 'planer-end', 0.25, 'far')(smallShop))).toEqual([
      'main > collector',
      'planer-run > main',
      'planer-end > planer-run',
      'far > planer-end 0',
      'saw-run > planer-end 45',
      'planer * far',
      'saw * saw-run',
    ]);
  });

  it('goes further along the pipe that it joins already', () => {
    const shop = moveBranchOnto('saw-run', 'main', 2, 'far')(smallShop);
    expect(runs(shop).slice(0, 2)).toEqual(['main > collector', 'far > main 0']);
    expect(runs(shop)).toContain('planer-run > far');
  });

  it('cuts nothing where the branch cannot go', () => {
    expect(moveBranchOnto('planer-run', 'planer-end', 0.5, 'far')(smallShop)).toBe(smallShop);
  });
});

describe('swapWithUpstream', () => {
  it('lets two pipes in a row change places', () => {
    expect(runs(swapWithUpstream('planer-run')(smallShop))).toEqual([
      'main > collector',
      'planer-end > main 0',
      'planer-run > planer-end',
      'saw-run > main 45',
      'planer * planer-run',
      'saw * saw-run',
    ]);
  });

  it('carries a wye along', () => {
    const shop = insertUpstream('main', {
      id: 'riser',
      pipe: { kind: 'custom', diameter: 0.15, roughness: 0 },
      length: 1,
      fittings: [],
    })(smallShop);
    const swapped = runs(swapWithUpstream('main')(shop));
    expect(swapped.slice(0, 3)).toEqual([
      'riser > collector',
      'main > riser',
      'planer-run > main 0',
    ]);
  });

  it('does nothing at a wye or at a drop', () => {
    expect(swapWithUpstream('main')(smallShop)).toBe(smallShop);
    expect(swapWithUpstream('saw-run')(smallShop)).toBe(smallShop);
  });
});

describe('moveAmongBranches', () => {
  const wide = duplicateBranch('saw-run')(smallShop);

  it('changes the order of the branches only', () => {
    const moved = moveAmongBranches('saw-run-2', -1)(wide);
    expect(moved.sections.map(({ id }) => id).slice(3)).toEqual(['saw-run-2', 'saw-run']);
    expect(moveAmongBranches('saw-run', 1)(wide)).toEqual(moved);
  });

  it('does nothing at the ends and to the straight run', () => {
    expect(moveAmongBranches('saw-run-2', 1)(wide)).toBe(wide);
    expect(moveAmongBranches('saw-run', -1)(wide)).toBe(wide);
    expect(moveAmongBranches('planer-run', 1)(wide)).toBe(wide);
  });
});

describe('moveDropInList', () => {
  it('changes places with a neighbour, and stops at the ends', () => {
    const ids = (shop: Shop) => shop.drops.map(({ id }) => id);
    expect(ids(moveDropInList('saw', -1)(smallShop))).toEqual(['saw', 'planer']);
    expect(moveDropInList('saw', 1)(smallShop)).toBe(smallShop);
    expect(() => moveDropInList('lathe', 1)(smallShop)).toThrow(RangeError);
  });
});

describe('removeBranch', () => {
  it('takes all of it, with its drops, and the pipe below that nothing else uses', () => {
    const wide = duplicateBranch('planer-end')(smallShop);
    expect(runs(removeBranch('planer-run')(wide))).toEqual([
      'main > collector',
      'saw-run > main',
      'saw * saw-run',
    ]);
    expect(runs(removeBranch('planer-end')(smallShop))).toEqual(
      runs(removeDrop('planer')(smallShop)),
    );
  });

  it('does nothing where no drop would be left', () => {
    expect(removeBranch('main')(smallShop)).toBe(smallShop);
    const last = removeDrop('planer')(smallShop);
    expect(removeBranch('saw-run')(last)).toBe(last);
  });
});

describe('freshName', () => {
  it('counts on from a number that is there', () => {
    expect(freshName('Lathe', [])).toBe('Lathe');
    expect(freshName('Lathe 2', ['Lathe 2', 'Lathe 3'])).toBe('Lathe 4');
    expect(freshName('Ast 160', ['Ast 160'])).toBe('Ast 2');
  });
});
