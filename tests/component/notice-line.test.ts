import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import type { Notice } from '../../src/state/notice.ts';
import type { NoticeLine } from '../../src/ui/notice-line/notice-line.ts';
import '../../src/ui/notice-line/notice-line.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const placeLine = (notice?: Notice) =>
  place<NoticeLine>(html`<dc-notice-line .notice=${notice}></dc-notice-line>`);

describe('the notice line', () => {
  it('is accessible, silent or not', async () => {
    await expectAccessible(await placeLine());
    await expectAccessible(
      await placeLine({ text: 'Not opened.', problems: [{ place: 'air', message: 'is missing' }] }),
    );
  });

  it('shows nothing where there is nothing to say', async () => {
    await placeLine();
    expect(page.getByRole('button').elements()).toHaveLength(0);
  });

  it('says its line, with what is wrong and where', async () => {
    const problems = [{ place: 'air', message: 'is missing' }];
    await placeLine({ text: 'Not opened.', problems });
    expect(text('Not opened.').elements()).toHaveLength(1);
    expect(page.getByRole('listitem').element().textContent).toBe('air is missing');
    expect(button('Undo').elements()).toHaveLength(0);
  });

  it('takes back what it tells of, and goes when it is told to', async () => {
    const undone: string[] = [];
    const line = await placeLine({ text: 'Deleted.', undo: () => undone.push('deletion') });
    const dismissals = heard(line, 'dc-dismiss');
    await button('Undo').click();
    expect(undone).toEqual(['deletion']);
    await button('Dismiss').click();
    expect(dismissals).toHaveLength(1);
  });
});
