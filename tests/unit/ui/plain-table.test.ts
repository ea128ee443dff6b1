import { describe, expect, it } from 'vitest';
import { plainTable } from '../../../src/ui/answer-table/plain-table.ts';

describe('a table of answers as plain figures', () => {
  const table = plainTable({
    caption: 'In every size',
    columns: [{ name: 'size' }, { name: 'air', unit: 'cfm', group: 'today' }, { name: 'verdict' }],
    rows: [
      { key: 'a', cells: ['5 in.', { text: '850', by: 850 }], mark: 'today' },
      { key: 'b', cells: ['6 in.', '900', { text: 'carries', verdict: 'carries' }] },
    ],
    foot: [{ name: 'to be bought', cells: [{ text: '12 ft of 6 in. pipe', span: 2 }] }],
  });

  it('names columns with their group, and leaves their units apart', () => {
    expect(table.columns).toEqual([
      { name: 'size', unit: undefined },
      { name: 'today, air', unit: 'cfm' },
      { name: 'verdict', unit: undefined },
    ]);
  });

  it('has a cell for each column in every row', () => {
    expect(table.rows).toEqual([
      ['5 in. (today)', '850', ''],
      ['6 in.', '900', 'carries'],
      ['to be bought', '12 ft of 6 in. pipe', ''],
    ]);
  });
});
