import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import type { AnswerRow } from '../../src/state/decisions/answer-rows.ts';
import '../../src/ui/answer-table/answer-table.ts';
import type { AnswerTable } from '../../src/ui/answer-table/answer-table.ts';
import { button, drawn, expect, expectAccessible, heard, html, place } from './harness.ts';

const rows: readonly AnswerRow[] = [
  {
    key: 'b',
    cells: ['6 in.', { text: '850', by: 850 }, 'carries'],
    mark: 'today',
    take: 'main of 6 in.',
  },
  {
    key: 'a',
    cells: ['5 in.', { text: '1,020', by: 1020 }, { text: 'settles', verdict: 'settles' }],
    take: 'main of 5 in.',
  },
  { key: 'c', cells: ['7 in.', '–', 'short'] },
];
const columns = [{ name: 'size' }, { name: 'air', unit: 'cfm' }, { name: 'verdict' }];
const placeTable = () =>
  place<AnswerTable>(html`<dc-answer-table
    sortable
    caption="In every size"
    .columns=${columns}
    .rows=${rows}
  ></dc-answer-table>`);
const first = () =>
  page
    .getByRole('rowheader')
    .elements()
    .map((each) => each.textContent?.trim().slice(0, 5));

describe('a table of answers', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeTable());
    expect(page.getByRole('table', { name: 'In every size' }).elements()).toHaveLength(1);
    expect(first()).toEqual(['6 in.', '5 in.', '7 in.']);
  });

  it('sorts by figures, not by their text, and turns round; what has no figure stays last', async () => {
    await placeTable();
    await button(/^air/).click();
    await drawn();
    expect(first()).toEqual(['6 in.', '5 in.', '7 in.']);
    const head = page.getByRole('columnheader', { name: /^air/ }).element();
    expect(head.getAttribute('aria-sort')).toBe('ascending');
    await button(/^air/).click();
    await drawn();
    expect(first()).toEqual(['5 in.', '6 in.', '7 in.']);
    expect(head.getAttribute('aria-sort')).toBe('descending');
  });

  it('sorts by words where a column holds words', async () => {
    await placeTable();
    await button(/^verdict/).click();
    await drawn();
    expect(first()).toEqual(['6 in.', '5 in.', '7 in.']);
    await button(/^size/).click();
    await drawn();
    expect(first()).toEqual(['5 in.', '6 in.', '7 in.']);
  });

  it('draws many rows a portion a frame, in the end all of them, also when they change', async () => {
    const many = (words: string) =>
      Array.from({ length: 40 }, (_, i): AnswerRow => ({ key: String(i), cells: [`${i}`, words] }));
    const table = await place<AnswerTable>(html`<dc-answer-table
      caption="Many"
      .columns=${[{ name: 'drop' }, { name: 'verdict' }]}
      .rows=${many('carries')}
    ></dc-answer-table>`);
    const cells = (words: string) => page.getByRole('cell', { name: words }).elements().length;
    await expect.poll(() => cells('carries')).toBe(40);
    table.rows = many('settles');
    await table.updateComplete;
    expect(page.getByRole('rowheader').elements()).toHaveLength(40);
    expect(cells('settles')).toBeLessThan(40);
    await expect.poll(() => cells('settles')).toBe(40);
    table.rows = many('settles').slice(0, 3);
    await expect.poll(() => page.getByRole('rowheader').elements().length).toBe(3);
  });

  it('can be saved and copied', async () => {
    await placeTable();
    expect(button('Save as CSV: In every size').elements()).toHaveLength(1);
    expect(button('Copy as text: In every size').elements()).toHaveLength(1);
  });

  it('asks for a row to be taken over, or kept, and offers it only where it can be', async () => {
    const table = await placeTable();
    const takes = heard(table, 'dc-take');
    await button('Make it so: main of 5 in.').click();
    await button('Keep beside: main of 6 in.').click();
    expect(takes.map(({ key, how }) => [key, how])).toEqual([
      ['a', 'make'],
      ['b', 'keep'],
    ]);
    expect(page.getByRole('button', { name: /^Make it so/ }).elements()).toHaveLength(2);
  });
});
