import { describe, expect, it } from 'vitest';
import { setHood, setNeed } from '../../../../src/shop/edits/edit-drop.ts';
import { setFittings, setJoin, setPipe } from '../../../../src/shop/edits/edit-section.ts';
import { nameDrop } from '../../../../src/shop/edits/name-drop.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { modelOf } from '../../../../src/shop/shop-model.ts';
import { dropFormView } from '../../../../src/state/run-editor/drop-form-view.ts';
import { sectionFormView } from '../../../../src/state/run-editor/section-form-view.ts';
import { smallShop } from '../../shop/small-shop.ts';
import { demoShop } from '../demo-shop.ts';

const section = (shop: Shop, id: string) => sectionFormView(shop, modelOf(shop), id, 'metric')!;
const drop = (shop: Shop, id: string) => dropFormView(shop, modelOf(shop), id, 'us')!;

describe('the form of a section', () => {
  it('shows true inside diameter and wall with their sources', () => {
    const { pipe } = section(demoShop(), 'planer');
    expect(pipe.diameterSource).toMatch(/^ASTM D2729/);
    expect(pipe.roughness).toMatchObject({ own: undefined, usual: 1.5e-6 });
    const rough = setPipe('saw-run', {
      kind: 'catalogue',
      family: 'pvc-schedule-40',
      size: '4in',
      roughness: 1e-4,
    })(smallShop);
    expect(section(rough, 'saw-run').pipe.roughness).toMatchObject({ own: 1e-4, usual: 1.5e-6 });
  });

  it('shows the reducer between pipes in a row, and none at a wye or at equal sizes', () => {
    const reducer = section(smallShop, 'planer-end').reducer!;
    expect(reducer.sizes).toBe('100\u2009mm to 125\u2009mm');
    // A cone of 20°: 2.6·sin 10°·(1 − 0.8²)² on the smaller pipe (Crane TP-410, appendix A).
    expect(reducer.coefficient).toBeCloseTo(0.0585, 4);
    expect(reducer.source).toMatch(/^Crane/);
    expect(section(smallShop, 'saw-run').reducer).toBeUndefined();
    expect(section(smallShop, 'main').reducer).toBeUndefined();
  });

  it('shows what a fitting loses and what was put in its place', () => {
    const { fittings } = section(smallShop, 'main');
    // Rennels and Hudson, 90° and radius 1.5 in smooth 150 mm duct at 20 m/s: about 0.21.
    expect(fittings[0]?.coefficient.usual).toBeGreaterThan(0.19);
    expect(fittings[0]?.coefficient.usual).toBeLessThan(0.24);
    expect(fittings[0]?.coefficient.source).toMatch(/^at 20.3\u2009m\/s · .*Rennels.*verified$/);
    const own = setFittings('main', [{ kind: 'mitre', angle: 90, count: 3, coefficient: 0.9 }]);
    const [mitre] = section(own(smallShop), 'main').fittings;
    expect(mitre?.coefficient.own).toBe(0.9);
    // 0.42·sin 45° + 2.56·sin³ 45°, of one, not of three.
    expect(mitre?.coefficient.usual).toBeCloseTo(1.2, 2);
  });

  it('knows a branch factor of the table from one of your own', () => {
    const fixed = (coefficient: number) =>
      section(setJoin('saw-run', { kind: 'fixed', coefficient, of: 'own' })(smallShop), 'saw-run');
    expect(fixed(0.28).join?.source).toMatch(/worksheets/);
    expect(fixed(0.3).join?.source).toBe('entered for this shop');
    expect(fixed(0.3).join).toMatchObject({ inlets: 2, into: 'Main' });
  });
});

describe('the form of a drop', () => {
  it('tells a guideline from a need of your own', () => {
    const demo = demoShop();
    const { need } = drop(demo, 'planer');
    expect(need).toMatchObject({ own: undefined, source: 'common practice, no source' });
    const own = setNeed('planer', 0.3, 'planer')(demo);
    expect(drop(own, 'planer').need).toMatchObject({ own: 0.3, usual: need.usual });
  });

  it('works out the entry loss of a measured hood', () => {
    const measured = setHood('saw', { kind: 'measured', suction: 480, velocity: 20 })(smallShop);
    // 480 Pa over a velocity pressure of 240 Pa, less the one that is acceleration.
    expect(drop(measured, 'saw').entryLoss).toBeCloseTo(1, 12);
    expect(drop(measured, 'saw').hoodSource).toBe('measured on the machine');
  });

  it('shows the port as the pipe’s where nothing is said, and the usual gate', () => {
    expect(drop(smallShop, 'saw')).toMatchObject({
      port: { own: undefined, usual: 0.1 },
      reducer: undefined,
      leak: { own: undefined, usual: 0.005 },
    });
    expect(drop(demoShop(), 'table-saw').reducer?.sizes).toMatch(/^5\u2009in. to 6.07/);
  });
});

describe('nameDrop', () => {
  it('names the pipe along that is named after the drop, and no other', () => {
    const demo = demoShop();
    const shop = nameDrop('jointer', 'Long jointer')(demo);
    expect(shop.drops.find(({ id }) => id === 'jointer')?.name).toBe('Long jointer');
    const named = nameDrop(
      'saw',
      'Saw',
    )({
      ...smallShop,
      sections: smallShop.sections.map((each) =>
        each.id === 'saw-run' ? { ...each, name: 'Band saw drop' } : each,
      ),
    });
    expect(named.sections.map(({ name }) => name)).toEqual([
      'Main',
      undefined,
      undefined,
      'Saw drop',
    ]);
  });
});
