import { describe, expect, it } from 'vitest';
import { removeDrop } from '../../../../src/shop/edits/remove-part.ts';
import { checkShop } from '../../../../src/shop/open-shop.ts';
import { partActions, partAfter } from '../../../../src/state/run-editor/part-actions.ts';
import type { Part } from '../../../../src/state/selected-part.ts';
import { smallShop } from '../../shop/small-shop.ts';
import { demoShop } from '../demo-shop.ts';

const words = (part: Part, shop = smallShop) =>
  partActions(shop, part, 'us').map(({ words: each }) => each);
const done = (part: Part, id: string, shop = smallShop) =>
  partActions(shop, part, 'us')
    .find((each) => each.id === id)!
    .edit(shop);

describe('what can be done with a part', () => {
  it('keeps any shop in order and changes something, for every part of the demo', () => {
    const shop = demoShop();
    const parts: Part[] = [
      ...shop.sections.map(({ id }) => ({ kind: 'section', id }) as const),
      ...shop.drops.map(({ id }) => ({ kind: 'drop', id }) as const),
    ];
    for (const part of parts) {
      const actions = partActions(shop, part, 'us');
      expect(new Set(actions.map(({ id }) => id)).size).toBe(actions.length);
      for (const { id, edit } of actions) {
        const next = edit(shop);
        expect(next, `${part.id}: ${id}`).not.toBe(shop);
        expect(checkShop(next), `${part.id}: ${id}`).toEqual([]);
      }
    }
  });

  it('does not offer what cannot be', () => {
    const main = words({ kind: 'section', id: 'main' });
    expect(main).toContain('Add a branch at its upstream end');
    expect(main).not.toContain('Delete this pipe');
    expect(main.some((each) => each.startsWith('Duplicate'))).toBe(false);
    const saw = words({ kind: 'section', id: 'saw-run' });
    expect(saw).toContain('Delete with its drop');
    expect(saw).not.toContain('Add a branch at its upstream end');
    const last = removeDrop('planer')(smallShop);
    expect(words({ kind: 'drop', id: 'saw' }, last)).not.toContain('Delete with its pipe');
    expect(words({ kind: 'drop', id: 'nobody' })).toEqual([]);
  });

  it('puts in a hose of the nearest size at a drop', () => {
    const shop = done({ kind: 'drop', id: 'saw' }, 'hose');
    const hose = shop.sections.find(({ name }) => name === 'Band saw hose');
    expect(hose?.pipe).toMatchObject({ family: 'hose-wire-helix', size: '100mm' });
    expect(shop.drops.find(({ id }) => id === 'saw')?.into).toBe(hose?.id);
  });

  it('names new pipe after its drop, and what is cut off after the rest', () => {
    const shop = done({ kind: 'section', id: 'main' }, 'branch-off');
    expect(shop.drops.at(-1)?.name).toBe('New drop');
    expect(shop.sections.map(({ name }) => name)).toContain('New drop drop');
    expect(shop.sections.map(({ name }) => name)).toContain('Main 2');
  });

  it('begins with lengths that are round in the reader’s units', () => {
    const inserted = (system: 'us' | 'metric') =>
      partActions(smallShop, { kind: 'section', id: 'saw-run' }, system)
        .find(({ id }) => id === 'insert-upstream')!
        .edit(smallShop)
        .sections.at(-1)?.length;
    expect(inserted('metric')).toBe(1);
    expect(inserted('us')).toBeCloseTo(0.9144, 12);
  });
});

describe('the part to look at afterwards', () => {
  const saw: Part = { kind: 'section', id: 'saw-run' };
  const main: Part = { kind: 'section', id: 'main' };

  it('is what is new, drops first', () => {
    const branched = done(saw, 'branch-off');
    expect(partAfter(smallShop, branched, saw, main)).toEqual({ kind: 'drop', id: 'new-drop' });
    const inserted = done(saw, 'insert-upstream');
    expect(partAfter(smallShop, inserted, saw, main)?.kind).toBe('section');
  });

  it('stays as it was, or falls back where it is gone', () => {
    const moved = done(saw, 'to planer-run');
    expect(partAfter(smallShop, moved, saw, main)).toEqual(saw);
    const deleted = done(saw, 'delete-branch');
    expect(partAfter(smallShop, deleted, saw, main)).toEqual(main);
  });
});
