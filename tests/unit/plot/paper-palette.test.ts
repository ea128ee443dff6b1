import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { paperPalette } from '../../../src/plot/paper-palette.ts';

describe('the colours of paper', () => {
  it('are those of the printed page', () => {
    const css = readFileSync(join(import.meta.dirname, '../../../src/app/page.css'), 'utf8');
    const print = /@media print \{\s*:root \{([^}]*)\}/.exec(css)?.[1] ?? '';
    const printed = [...print.matchAll(/(--dc-[\w-]+):\s*(#\w+);/g)].map(([, name, value]) => [
      name,
      value,
    ]);
    expect(Object.fromEntries(printed)).toEqual(paperPalette);
  });
});
