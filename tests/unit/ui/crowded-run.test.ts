// The drawing of 40 drops on five lines, at the sizes that the page gives it: on a wide screen, a tablet, a
// phone, and drawn apart. Words must not meet one another or another duct, nor leave the drawing.
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/plot/frame.ts';
import { travelsWhenOpen } from '../../../src/shop/gate-state.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { runShape, runView } from '../../../src/state/run-view.ts';
import { textSize } from '../../../src/ui/operating-plot/text-size.ts';
import { RunDraughtsman } from '../../../src/ui/run-drawing/drawn-run.ts';
import { NAME_INDENT, NAME_SIZE, namedDrops } from '../../../src/ui/run-drawing/run-words.ts';
import type { UnitSystem } from '../../../src/units/quantity.ts';
import { branchedShop } from '../../setup/branched-shop.ts';

const shop = branchedShop(5, 8);
const model = modelOf(shop);
const allOpen = travelsWhenOpen(
  shop.drops,
  shop.drops.map(({ id }) => id),
);
const report = stateReport(model, allOpen);
const sizes = [
  { place: 'a wide screen', width: 545, height: 640, zoom: 1 },
  { place: 'a tablet', width: 756, height: 1100, zoom: 1 },
  { place: 'a phone', width: 358, height: 1040, zoom: 1 },
  { place: 'a phone, drawn apart', width: 358, height: 1040, zoom: 2.25 },
] as const;
const WORD_SIZE = 12;
/** Of a duct on either side of words in it, and of paper between words [px]. */
const BESIDE = 12;
const BETWEEN = 8;
/** A duct that is words for the greater part is no line any more [-]. */
const MOST_OF_DUCT = 0.45;
const systems = ['us', 'metric'] as const;

function drawn(size: (typeof sizes)[number], system: UnitSystem) {
  const sections = runView(shop, model, report, system, runShape(shop, model, system));
  const run = new RunDraughtsman().draw(sections, { ...size, widestSpeed: '8,888' });
  const words = run.labels.flatMap(({ speed, length }, duct) =>
    [speed, length].flatMap((placed) => (placed ? [{ ...placed, duct }] : [])),
  );
  return { sections, run, words };
}

const cases = sizes.flatMap((size) =>
  systems.map((system) => ({ ...size, system, ...drawn(size, system) })),
);

describe.each(cases)('40 drops on $place, $system', ({ width, zoom, sections, run, words }) => {
  it('names every drop, each name on a line of its own and inside the drawing', () => {
    const named = namedDrops(sections, run.sections, undefined);
    const drops = sections.flatMap(({ drop }, i) => (drop ? [{ name: drop.name, i }] : []));
    expect(drops).toHaveLength(40);
    expect(drops.filter(({ i }) => !named.has(i))).toEqual([]);
    const heights = drops.map(({ i }) => run.sections[i]!.level.y).toSorted((a, b) => a - b);
    for (const [i, y] of heights.slice(1).entries()) {
      expect(y - heights[i]!).toBeGreaterThanOrEqual(NAME_SIZE);
    }
    for (const { name, i } of drops) {
      const end = run.sections[i]!.level.to + NAME_INDENT + textSize(name, NAME_SIZE).width;
      expect(end, name).toBeLessThanOrEqual(width * zoom);
    }
  });

  it('lets no words meet others', () => {
    const met = words.flatMap((one, i) =>
      words.slice(i + 1).filter((other) => overlap(one.box, other.box) > 0),
    );
    expect(words.length).toBeGreaterThan(30);
    expect(met).toEqual([]);
  });

  it('lets no words meet a duct, but for its own that they are written into', () => {
    const met = words.flatMap(({ box, duct, side }) =>
      run.sections.flatMap(({ level, weight }, other) => {
        const ink = {
          left: level.from,
          right: level.to,
          top: level.y - weight / 2,
          bottom: level.y + weight / 2,
        };
        const isOwn = side === 'in' && other === duct;
        return !isOwn && overlap(box, ink) > 0 ? [{ duct, other }] : [];
      }),
    );
    expect(met).toEqual([]);
  });

  it('keeps all ducts and words inside the drawing', () => {
    const boxes = [
      ...words.map(({ box }) => box),
      ...run.sections.map(({ level, weight }) => ({
        left: level.from,
        right: level.to,
        top: level.y - weight / 2,
        bottom: level.y + weight / 2,
      })),
    ];
    for (const { left, right, top, bottom } of boxes) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(run.width);
      expect(bottom).toBeLessThanOrEqual(run.height);
    }
  });

  it('writes the length wherever its duct has room for it beside the speed', () => {
    const missing = run.sections.flatMap(({ level }, i) => {
      const { length, name } = sections[i]!;
      const labels = run.labels[i]!;
      const speed = labels.speed ? labels.speed.box.right - labels.speed.box.left + BETWEEN : 0;
      const text = textSize(length, WORD_SIZE).width;
      const wanted = Math.max(speed + text + 2 * BESIDE, text / MOST_OF_DUCT);
      return level.to - level.from > wanted && !labels.length ? [name] : [];
    });
    expect(missing).toEqual([]);
  });
});

/** Area that two boxes share [px²]. */
function overlap(a: Box, b: Box): number {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return Math.max(0, across) * Math.max(0, down);
}
