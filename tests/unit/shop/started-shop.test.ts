import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleCurves } from '../../../src/shop/example-curves.ts';
import { travelsWhenOpen } from '../../../src/shop/gate-state.ts';
import { checkShop, openShopDocument } from '../../../src/shop/open-shop.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { type ShopStart, startedShop } from '../../../src/shop/started-shop.ts';
import { stateReport } from '../../../src/shop/state-report.ts';

const start = (changes: Partial<ShopStart> = {}): ShopStart => ({
  name: 'Shed',
  curve: exampleCurves()[0]!,
  main: { pipe: { kind: 'catalogue', family: 'galvanised-spiral', size: '4in' }, length: 5 },
  drop: {
    name: 'Band saw',
    machine: 'band-saw',
    pipe: { kind: 'custom', diameter: 0.1, roughness: 9e-5 },
    length: 2,
  },
  ...changes,
});

describe('a started shop', () => {
  it.each(exampleCurves())('is in order and has a live point on $name', (curve) => {
    const shop = startedShop(start({ curve }));
    expect(openShopDocument(structuredClone(shop))).toEqual({ kind: 'opened', shop });
    const report = stateReport(modelOf(shop), travelsWhenOpen(shop.drops, ['band-saw']));
    expect(report.operatingPoint!.flow).toBeGreaterThan(0.02);
  });

  it('is in order whatever the drop is called', () => {
    for (const name of ['main', 'collector', '…', 'Hobel – groß', 'x'.repeat(150)]) {
      const { drop } = start();
      const shop = startedShop(start({ drop: { ...drop, name, machine: undefined } }));
      expect(checkShop(shop)).toEqual([]);
      expect(openShopDocument(structuredClone(shop)).kind).toBe('opened');
    }
  });

  it('needs what the machine asks for', () => {
    const shop = startedShop(start());
    const report = stateReport(modelOf(shop), travelsWhenOpen(shop.drops, []));
    expect(report.drops[0]!.need).toBe(0.188779);
  });
});

describe('the example curves', () => {
  it('are all those of the folder, and each says that its points are invented', () => {
    const files = readdirSync(join(import.meta.dirname, '../../../curves')).filter((name) =>
      name.endsWith('.json'),
    );
    expect(
      exampleCurves()
        .map(({ id }) => `${id}.json`)
        .toSorted(),
    ).toEqual(files.toSorted());
    for (const { note } of exampleCurves()) expect(note).toMatch(/^Invented/);
  });
});
