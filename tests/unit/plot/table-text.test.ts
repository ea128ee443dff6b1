import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../../src/units/format.ts';
import { csvText, plainText } from '../../../src/plot/table-text.ts';

const table = {
  caption: 'Speeds',
  columns: [{ name: 'Drop' }, { name: 'Speed', unit: 'ft/min' }, { name: 'Verdict' }],
  rows: [
    ['Saw, "old"', '4,390', 'carries'],
    ['=HYPERLINK("x")', '−12.5', '-1 to 2'],
    ['Lathe', '—', 'no flow\tat all'],
    ['Sander', formatQuantity('flow', 'metric', 0.4).number, ''],
  ],
};

describe('csvText', () => {
  it('writes bare figures, quoted words, and nothing that a spreadsheet would run', () => {
    expect(csvText(table)).toBe(
      [
        '\uFEFFDrop,Speed [ft/min],Verdict',
        '"Saw, ""old""",4390,carries',
        `"'=HYPERLINK(""x"")",-12.5,'-1 to 2`,
        'Lathe,—,no flow at all',
        'Sander,1440,',
        '',
      ].join('\r\n'),
    );
  });
});

describe('plainText', () => {
  it('writes a line a row with tabs, the caption first', () => {
    expect(plainText(table).split('\n').slice(0, 3)).toEqual([
      'Speeds',
      'Drop\tSpeed [ft/min]\tVerdict',
      'Saw, "old"\t4,390\tcarries',
    ]);
  });
});
