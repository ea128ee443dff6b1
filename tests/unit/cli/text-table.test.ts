import { describe, expect, it } from 'vitest';
import { textTable } from '../../../src/cli/text-table.ts';

describe('textTable', () => {
  it('lines up each column on its side, without trailing spaces', () => {
    const columns = [
      { heading: 'Drop', side: 'left' },
      { heading: 'Flow', side: 'right' },
      { heading: 'Verdict', side: 'left' },
    ] as const;
    expect(
      textTable(columns, [
        ['Säge', '7', 'ok'],
        ['Hobelbank', '1,234', 'settles'],
      ]),
    ).toEqual(['Drop        Flow  Verdict', 'Säge           7  ok', 'Hobelbank  1,234  settles']);
  });

  it('counts a letter with its accent as one place', () => {
    const columns = [
      { heading: '', side: 'left' },
      { heading: '', side: 'left' },
    ] as const;
    const [, first, second] = textTable(columns, [
      ['Sa\u0308ge', 'x'],
      ['Sage', 'x'],
    ]);
    expect(first?.normalize('NFC').indexOf('x')).toBe(second?.indexOf('x'));
  });
});
