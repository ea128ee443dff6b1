// A file of each version of each format, as it was written then. Each must open today. The files are
// never changed: a new version of a format brings a new file, shop-N.json or curve-N.json.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openCurve } from '../../../../src/shop/open-curve.ts';
import { openShop } from '../../../../src/shop/open-shop.ts';
import { isOldDocument } from '../../../../src/shop/opening/is-old-document.ts';
import {
  CURVE_HISTORY,
  SHOP_HISTORY,
  type VersionHistory,
} from '../../../../src/shop/opening/migrations.ts';

const fileOf = (stem: string, version: number) =>
  join(import.meta.dirname, 'stored', `${stem}-${version}.json`);
const versionsOf = ({ newest }: VersionHistory) => Array.from({ length: newest }, (_, i) => i + 1);

describe.each([
  ['shop', SHOP_HISTORY, openShop],
  ['curve', CURVE_HISTORY, openCurve],
] as const)('stored files: %s', (stem, history, open) => {
  it.each(versionsOf(history))('there is one of version %d, and it says so', (version) => {
    const file = fileOf(stem, version);
    expect(existsSync(file), `${file} is missing`).toBe(true);
    const document = JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>;
    expect(document).toMatchObject({ format: history.format, version });
  });

  it.each(versionsOf(history))('the one of version %d opens', (version) => {
    expect(open(readFileSync(fileOf(stem, version), 'utf8'))).toMatchObject({ kind: 'opened' });
  });

  it('one of a version to come is refused, and the message says so', () => {
    const document = JSON.parse(readFileSync(fileOf(stem, 1), 'utf8')) as object;
    const opened = open(JSON.stringify({ ...document, version: history.newest + 1 }));
    expect(opened).toMatchObject({ kind: 'refused', problems: [{ place: 'version' }] });
    if (opened.kind !== 'refused') return;
    expect(opened.problems[0]?.message).toContain('made by a newer version of this program');
  });
});

describe('isOldDocument', () => {
  it('knows the stored shops of older versions from that of today', () => {
    for (const version of versionsOf(SHOP_HISTORY)) {
      const document: unknown = JSON.parse(readFileSync(fileOf('shop', version), 'utf8'));
      if (version < SHOP_HISTORY.newest) expect(isOldDocument(document)).toBe(true);
    }
    const opened = openShop(readFileSync(fileOf('shop', SHOP_HISTORY.newest), 'utf8'));
    expect(opened.kind === 'opened' && isOldDocument(opened.shop)).toBe(false);
  });
});
