// Compares what the page shows with what the command line says of the file that the page saved.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Page } from 'playwright-core';
import { expect } from 'vitest';
import { openShop } from '../../src/shop/open-shop.ts';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { sentence } from '../../src/shop/sentence.ts';
import type { StateReport } from '../../src/shop/state-report.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { repository } from '../setup/source-files.ts';
import type { Hands } from './hands.ts';

/** A shop saved by the page, and what the command line says of it with some drops open. */
interface Saved {
  readonly shop: Shop;
  /** Drops by their names. */
  readonly report: (open: readonly string[]) => StateReport;
  readonly discard: () => void;
}

/** Saves the shop that was built, and holds two states of its gates on the page against the file. */
export async function saveAndCompare(page: Page, hands: Hands): Promise<void> {
  await hands.press('Shops');
  const saving = page.waitForEvent('download');
  await hands.press('Save as a file: Boat shed');
  const saved = await takeSaved(await saving);
  expectBuilt(saved.shop);
  await hands.press('Back to Boat shed');

  await hands.press('Only Planer');
  await expectPageToSay(page, saved.shop, saved.report(['Planer']));
  await hands.press('Open Lathe');
  await expectPageToSay(page, saved.shop, saved.report(['Planer', 'Lathe']));
  saved.discard();
}

/** Takes a saved file over; the command line is run as a maker would run it. */
async function takeSaved(download: Download): Promise<Saved> {
  const folder = mkdtempSync(join(tmpdir(), 'dropcurve-saved-'));
  const file = join(folder, download.suggestedFilename());
  await download.saveAs(file);
  const opened = openShop(readFileSync(file, 'utf8'));
  if (opened.kind === 'refused') throw new Error(JSON.stringify(opened.problems));
  const { shop } = opened;
  const report = (names: readonly string[]) => {
    const open = shop.drops.filter(({ name }) => names.includes(name)).map(({ id }) => id);
    const program = join(repository, 'node_modules', '.bin', 'tsx');
    const words = ['src/cli/solve.ts', file, '--json', '--open', open.join(',')];
    const run = spawnSync(program, words, { cwd: repository, encoding: 'utf8' });
    expect(run.stderr).toBe('');
    return (JSON.parse(run.stdout) as { states: StateReport[] }).states[0]!;
  };
  return { shop, report, discard: () => rmSync(folder, { recursive: true }) };
}

/** Holds sentence, point and every drop's flow and speed on the page against a report. */
async function expectPageToSay(page: Page, shop: Shop, report: StateReport): Promise<void> {
  const show = (quantity: 'flow' | 'pressure' | 'velocity', si: number) =>
    formatQuantity(quantity, 'us', si);
  const said = () => page.getByRole('main').locator('p').first().textContent();
  const plain = (words: string | null) => words?.replace(/\s+/g, ' ').trim();
  await expect.poll(async () => plain(await said())).toBe(plain(sentence(shop, report, 'us')));
  const point = report.operatingPoint!;
  await expect
    .poll(() => page.locator('text.flow-number').first().textContent())
    .toContain(show('flow', point.flow).number);
  expect(await page.locator('text.suction-number').first().textContent()).toContain(
    show('pressure', point.suction).number,
  );
  for (const drop of report.drops.filter(({ id }) => report.open.includes(id))) {
    const scale = page.getByRole('img', { name: new RegExp(`^${drop.name}: `) }).first();
    expect(await scale.getAttribute('aria-label')).toContain(show('velocity', drop.velocity).text);
    const name = page.getByRole('heading', { name: drop.name, exact: true });
    const row = page.getByRole('listitem').filter({ has: name });
    const flow = row.getByText(show('flow', drop.flow).number, { exact: true });
    expect(await flow.count(), drop.name).toBeGreaterThan(0);
  }
}

/** What the finished shop is to have, whatever hands built it. */
function expectBuilt(shop: Shop): void {
  const inlets = new Map<string, number>();
  for (const { into } of shop.sections) inlets.set(into, (inlets.get(into) ?? 0) + 1);
  expect(shop.name).toBe('Boat shed');
  expect(shop.drops.map(({ name }) => name).toSorted()).toEqual([
    'Band saw',
    'Floor sweep',
    'Jointer',
    'Lathe',
    'Planer',
    'Router table',
    'Sander',
    'Table saw',
  ]);
  expect([...inlets.values()].filter((count) => count > 1)).toHaveLength(3);
  expect(shop.collector.curve.points).toHaveLength(5);
  const pipes = shop.sections.map(({ pipe }) => pipe);
  const families = pipes.flatMap((pipe) => (pipe.kind === 'catalogue' ? pipe.family : []));
  expect(families.filter((family) => family.startsWith('hose')).toSorted()).toEqual([
    'hose-smooth-bore',
    'hose-wire-helix',
  ]);
  expect(pipes.filter(({ kind }) => kind === 'custom')).toEqual([
    { kind: 'custom', diameter: 0.111125, roughness: 1e-4 },
  ]);
  const hoods = shop.drops.map(({ hood }) => hood.kind);
  expect(hoods.filter((kind) => kind === 'measured')).toHaveLength(1);
  expect(shop.sections.find(({ id }) => id === 'main')).toMatchObject({
    length: 6.858,
    fittings: [{ kind: 'bend', angle: 90, radius: 1.5, count: 2 }],
  });
}
