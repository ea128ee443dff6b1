import { describe, expect, it } from 'vitest';
import { openShop, openShopDocument } from '../../../src/shop/open-shop.ts';
import { brokenFiles } from './broken-files.ts';
import { smallShop } from './small-shop.ts';

describe('a good shop file', () => {
  it('opens as it is written, without defaults added', () => {
    expect(openShop(JSON.stringify(smallShop))).toEqual({ kind: 'opened', shop: smallShop });
  });

  it('opens with a byte order mark and with names in any language', () => {
    const shop = { ...smallShop, name: '工房 – Тёплый цех – ورشة' };
    expect(openShop(`﻿${JSON.stringify(shop)}`)).toEqual({ kind: 'opened', shop });
  });
});

describe('a broken shop file', () => {
  it('is tried in more than the 45 ways that matter', () => {
    expect(new Set(brokenFiles.map(({ name }) => name)).size).toBe(brokenFiles.length);
    expect(brokenFiles.length).toBeGreaterThan(45);
  });

  it.each(brokenFiles)('is refused with its place: $name', ({ text, place, says }) => {
    const opened = openShop(text);
    if (opened.kind === 'opened') throw new Error('it was opened');
    const found = opened.problems.find((problem) => problem.place.startsWith(place));
    expect(found, JSON.stringify(opened.problems)).toBeDefined();
    expect(found?.message).toContain(says);
  });

  it('is complained of in one short line a problem, without program words', () => {
    for (const { text } of brokenFiles) {
      const opened = openShop(text);
      if (opened.kind === 'opened') continue;
      for (const { place, message } of opened.problems) {
        const line = `${place}: ${message}`;
        expect(line).not.toMatch(/\n|undefined|NaN:|\[object|Invalid|expected (object|string)/);
        expect(line.length).toBeLessThan(400);
      }
    }
  });

  it('is told all its problems at once, but no more than a hundred and their number', () => {
    const drop = { ...smallShop.drops[0], gate: { travel: 9 } };
    const shop = { ...smallShop, drops: Array.from({ length: 1000 }, () => drop) };
    const opened = openShopDocument(shop);
    if (opened.kind === 'opened') throw new Error('it was opened');
    expect(opened.problems).toHaveLength(101);
    expect(opened.problems[100]?.message).toContain('900 more');
  });
});
