// What the plots of suction and speed and the reading of a part are given says the same as the report.
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { partReading } from '../../../src/state/part-reading.ts';
import { speedsView } from '../../../src/state/speeds-view.ts';
import { suctionView } from '../../../src/state/suction-view.ts';
import { demoShop } from './demo-shop.ts';

const shop = demoShop();
const model = modelOf(shop);
const reportOf = (...open: string[]) =>
  stateReport(
    model,
    shop.drops.map(({ id }) => (open.includes(id) ? 1 : 0)),
  );
const report = reportOf('planer', 'floor-sweep');

describe('the way of the suction as it is shown', () => {
  const view = suctionView(shop, model, report, undefined, 'metric');

  it('is that of the drop that is worst off, and ends at the suction of the collector', () => {
    expect(view.drop?.id).toBe('planer');
    expect(view.steps.at(-1)?.total).toBeCloseTo(report.operatingPoint!.suction, 4);
    expect(view.steps.reduce((sum, { part }) => sum + part, 0)).toBeCloseTo(1, 9);
  });

  it('marks where another section begins', () => {
    const { way } = model.ducts.drops.find(({ id }) => id === 'planer')!;
    expect(view.steps.filter(({ begins }) => begins)).toHaveLength(way.length - 1);
  });

  it('follows what is selected: a drop, or a section whose air comes from one', () => {
    const choose = (kind: 'drop' | 'section', id: string) =>
      suctionView(shop, model, report, { kind, id }, 'us').drop?.id;
    expect(choose('drop', 'lathe')).toBe('lathe');
    expect(choose('section', 'floor-sweep')).toBe('floor-sweep');
    expect(choose('section', 'main-1')).toBe('planer');
    expect(choose('section', 'lathe-hose')).toBe('lathe');
    expect(choose('section', 'west-1')).toBe('planer');
  });

  it('says so where nothing is open', () => {
    expect(suctionView(shop, model, reportOf(), undefined, 'us').sentence).toContain('Nothing is');
  });
});

describe('the speeds as they are shown', () => {
  const former = { shop, report: reportOf('planer') };

  it('keep the former ones of drops that were open', () => {
    const { rows, hasFormer } = speedsView(shop, report, report, former, 'us');
    const row = (id: string) => rows.find(({ drop }) => drop.id === id);
    expect(hasFormer).toBe(true);
    expect(row('planer')?.former?.speed?.shown.number).toBe('4,340');
    expect(row('floor-sweep')?.former).toBeUndefined();
    expect(row('lathe')?.drop.speed).toBeUndefined();
  });

  it('say what the range is where nothing was changed', () => {
    const { sentence, hasFormer } = speedsView(shop, report, report, undefined, 'us');
    expect(hasFormer).toBe(false);
    expect(sentence).toBe('Chips keep moving between 3,500 and 4,500\u2009ft/min.');
  });
});

describe('a part as it is read', () => {
  const read = (kind: 'section' | 'drop', id: string, state: 'settles' | 'still' = 'settles') =>
    partReading(shop, model, report, { kind, id }, state, 'us');

  it('tells speed, flow, size, loss and static pressure of a section', () => {
    const reading = read('section', 'main-5');
    expect(reading?.name).toBe('main by the jointer');
    expect(reading?.figures[0]).toBe('2,980\u2009ft/min, chips settle');
    expect(reading?.figures.join(' ')).toMatch(/cfm .* × .* loses .* static/);
  });

  it('tells no more of a still one than what it is', () => {
    expect(read('section', 'west-1', 'still')?.figures.join()).not.toMatch(/cfm|loses/);
  });

  it('tells the verdict, the slowest pipe and the need of a drop; shut ones are shut', () => {
    expect(read('drop', 'planer')?.figures).toEqual([
      '2,870\u2009ft/min, settles',
      '2,800 in planer drop',
      '563\u2009cfm, needs 500',
      expect.stringMatching(/^hood /),
    ]);
    expect(read('drop', 'lathe')?.figures).toEqual(['shut']);
    expect(read('drop', 'kiln')).toBeUndefined();
  });
});
