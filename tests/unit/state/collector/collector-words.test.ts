// The collector in words: folded to one line, and its effect while it is changed.
import { describe, expect, it } from 'vitest';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { setAir, setCollector } from '../../../../src/shop/edits/edit-shop.ts';
import { collectorFigures } from '../../../../src/state/collector/collector-figures.ts';
import { editedCurve } from '../../../../src/state/collector/edited-curve.ts';
import { effectWords } from '../../../../src/state/collector/effect-words.ts';
import { conditionsFigures } from '../../../../src/state/conditions-figures.ts';
import { Session } from '../../../../src/state/session.ts';
import { demoShop } from '../demo-shop.ts';

const spaced = (words: string) => words.replace(/[\u2009\u202f]/g, ' ');
const wordsOf = (session: Session) =>
  spaced(
    effectWords(
      {
        collector: session.shop.value.collector,
        air: session.model.value.air,
        report: session.report.value,
        before: session.former.value?.report,
      },
      'metric',
    ),
  );

describe('the line of figures', () => {
  it('tells the collector from its points to its separator', () => {
    const { collector } = demoShop();
    expect(spaced(collectorFigures(collector, 'metric'))).toBe(
      '5 hp cyclone, 16 in. wheel, 8 points of fan static pressure · filter at 1.5 times clean · separator K\u00a04.00',
    );
    const curve = exampleCurves().find(({ id }) => id === 'cyclone-3hp-14in')!;
    expect(
      spaced(
        collectorFigures(
          { curve, speedRatio: 0.9, filter: { kind: 'none' }, separator: { kind: 'none' } },
          'us',
        ),
      ),
    ).toBe(
      '3 hp cyclone, 14 in. wheel, 8 points of total suction · at 90 % of its speed · filter in the points · separator in the points',
    );
  });

  it('tells air, filter and range', () => {
    const shop = demoShop();
    expect(spaced(conditionsFigures(shop, 'metric'))).toBe(
      '1 100 m above the sea, 18 °C, 45 % humidity · filter 1.5 times clean · chips carried from 17.8 to 22.9 m/s',
    );
    const plain = setAir({ kind: 'plain', density: 1.2, viscosity: 1.8e-5 })(shop);
    expect(spaced(conditionsFigures(plain, 'metric'))).toMatch(/^air of 1.200 kg\/m³ ·/);
  });
});

describe('the effect of a change', () => {
  it('is told beside what held before it', () => {
    const session = new Session(demoShop(), ['planer'], 'metric');
    expect(wordsOf(session)).toMatch(
      /^The collector moves [\d ]+ m³\/h and leaves [\d ]+ Pa for the ducts\. On top of that the filter takes \d+ Pa and the separator takes \d+ Pa\.$/,
    );
    const before = wordsOf(session)
      .match(/moves ([\d ]+)/)![1]!
      .trim();
    session.edit(setCollector({ speedRatio: 0.8 }));
    expect(wordsOf(session)).toContain(`(before, ${before} m³/h)`);
  });

  it('leaves out what the points hold or nobody knows', () => {
    const curve = exampleCurves().find(({ id }) => id === 'cyclone-3hp-14in')!;
    const session = new Session(demoShop(), ['planer'], 'metric');
    session.edit(setCollector({ curve, filter: { kind: 'none' } }));
    expect(wordsOf(session)).not.toContain('takes');
  });
});

describe('an example that is edited', () => {
  const example = exampleCurves()[0]!;

  it('is an example no longer, and its name says so', () => {
    const after = editedCurve(example, { ...example, points: example.points.slice(1) });
    expect(after.id).toBeUndefined();
    expect(after.name).toBe(`${example.name}, changed`);
    expect(editedCurve(after, { ...after, density: 1.1 })).toEqual({ ...after, density: 1.1 });
  });

  it('keeps the name that it is given', () => {
    expect(editedCurve(example, { ...example, name: 'Ours' }).name).toBe('Ours');
  });
});
