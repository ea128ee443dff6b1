import { describe, expect, it } from 'vitest';
import { setJoin } from '../../../../src/shop/edits/edit-section.ts';
import { runOutline } from '../../../../src/state/run-editor/outline.ts';
import { runSummary } from '../../../../src/state/run-editor/run-summary.ts';
import { smallShop } from '../../shop/small-shop.ts';
import { demoShop } from '../demo-shop.ts';

/** Rows as short lines, indented by their depth. */
const lines = (shop = smallShop, order: 'flow' | 'outward' = 'flow') =>
  runOutline(shop, order, 'metric').map(
    ({ depth, kind, id, joins }) => `${'  '.repeat(depth)}${kind} ${id}${joins && `, ${joins}`}`,
  );

describe('the outline of a run', () => {
  it('goes with the air, each branch before and one deeper than what it joins', () => {
    expect(lines()).toEqual([
      'drop planer',
      'section planer-end',
      'section planer-run',
      '  drop saw',
      '  section saw-run, joins at 45°',
      'section main',
    ]);
  });

  it('goes the other way from the collector outwards', () => {
    expect(lines(smallShop, 'outward')).toEqual(lines().toReversed());
  });

  it('indents every branch of a wye through which nothing goes straight', () => {
    const shop = setJoin('planer-run', { kind: 'momentum', angle: 30 })(smallShop);
    expect(lines(shop).slice(0, 3)).toEqual([
      '  drop planer',
      '  section planer-end',
      '  section planer-run, joins at 30°',
    ]);
  });

  it('says what there is of a section, in the reader’s units', () => {
    const facts = (system: 'us' | 'metric') => runOutline(smallShop, 'flow', system).at(-1)?.facts;
    expect(facts('metric')).toBe('150\u2009mm · 6.00\u2009m · 1 fitting');
    expect(facts('us')).toContain('5.91\u2009in. · 19\' 8 1/4"');
  });

  it('has every section and every drop of the demo once', () => {
    const shop = demoShop();
    const keys = runOutline(shop, 'flow', 'us').map(({ kind, id }) => `${kind} ${id}`);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.length).toBe(shop.sections.length + shop.drops.length);
  });
});

describe('the summary of a run', () => {
  it('counts parts, and tells pipe from hose', () => {
    expect(runSummary(smallShop, 'metric')).toBe('2 drops, 4 sections: 12.00\u2009m of pipe');
    expect(runSummary(demoShop(), 'us')).toMatch(
      /^12 drops, \d+ sections: .+ of pipe and .+ of hose$/,
    );
  });
});
