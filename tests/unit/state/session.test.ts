import { describe, expect, it } from 'vitest';
import { setGateTravel } from '../../../src/shop/edits/edit-drop.ts';
import { setLength } from '../../../src/shop/edits/edit-section.ts';
import { removeDrop } from '../../../src/shop/edits/remove-part.ts';
import { modelOf } from '../../../src/shop/shop-model.ts';
import { stateReport } from '../../../src/shop/state-report.ts';
import { follow } from '../../../src/state/follow.ts';
import { travelsOf, withGate } from '../../../src/state/gate-positions.ts';
import { Session } from '../../../src/state/session.ts';
import { demoShop } from './demo-shop.ts';

const newSession = (open = ['planer']) => new Session(demoShop(), open, 'us');

describe('a session', () => {
  it('says what the core says of the same gates', () => {
    const session = newSession();
    session.dragGate('planer', 0.4);
    const shop = demoShop();
    const travels = travelsOf(shop.drops, new Map([['planer', 0.4]]));
    const direct = stateReport(modelOf(shop), travels);
    expect(session.report.value.open).toEqual(['planer']);
    // Both close to 1e-9; a warm start may end elsewhere within that.
    expect(session.report.value.operatingPoint?.flow).toBeCloseTo(direct.operatingPoint!.flow, 9);
  });

  it('solves nothing anew when a machine is renamed or a note is written', () => {
    const session = newSession();
    const before = session.report.value;
    const { model } = session;
    const sameModel = model.value;
    session.history.commit((shop) => ({
      ...shop,
      name: 'Other works',
      note: 'Moved the bench.',
      drops: shop.drops.map((drop) => ({ ...drop, name: `New ${drop.name}` })),
      sections: shop.sections.map((section) => ({ ...section, name: 'pipe', note: 'hung low' })),
    }));
    expect(model.value).toBe(sameModel);
    expect(session.report.value.operatingPoint).toBe(before.operatingPoint);
    expect(session.report.value.sections).toBe(before.sections);
    expect(session.sentence.value).toMatch(/^New Thickness planer open: /);
  });

  it('tells of an edit once, with the state that was before it', () => {
    const session = newSession();
    const told: (number | undefined)[] = [];
    const stop = follow(
      () => [
        session.shop.value,
        session.former.value?.shop.sections[0]?.length,
        session.trail.value,
      ],
      ([, length]) => told.push(length as number | undefined),
    );
    const { id, length } = session.shop.peek().sections[0]!;
    session.edit(setLength(id, length + 1));
    session.edit(setLength(id, length + 2));
    stop();
    expect(told).toEqual([undefined, length, length + 1]);
  });

  it('computes only what hangs on an edit', () => {
    const session = newSession();
    const { air, curve, ducts } = session.model.value;
    session.history.commit((shop) => ({
      ...shop,
      sections: shop.sections.map((section, i) => (i === 0 ? { ...section, length: 20 } : section)),
    }));
    expect(session.model.value.air).toBe(air);
    expect(session.model.value.curve).toBe(curve);
    expect(session.model.value.ducts).not.toBe(ducts);
    session.history.undo();
    session.history.commit((shop) => ({
      ...shop,
      collector: { ...shop.collector, speedRatio: 0.9 },
    }));
    expect(session.model.value.air).toBe(air);
    expect(session.model.value.curve).not.toBe(curve);
  });

  it('shows gates on their way while words already tell where they go', () => {
    const session = newSession();
    const start = session.report.value.operatingPoint!.flow;
    session.openOnly(['planer', 'floor-sweep']);
    expect(session.sentence.value).toContain('Floor sweep');
    expect(session.shownReport.value.operatingPoint?.flow).toBeCloseTo(start, 9);
    session.showGates(withGate(session.shownGates.value, 'floor-sweep', 0.5));
    const between = session.shownReport.value.operatingPoint!.flow;
    session.showGates(session.gates.value);
    const end = session.shownReport.value.operatingPoint!.flow;
    expect(between).toBeGreaterThan(start);
    expect(end).toBeGreaterThan(between);
    expect(session.shownReport.value).toBe(session.report.value);
  });

  it('speaks in the chosen units', () => {
    const session = newSession();
    expect(session.sentence.value).toContain('cfm');
    session.units.value = 'metric';
    expect(session.sentence.value).toContain('m³/h');
  });

  it('leaves a trail of the states at rest, each once, and forgets it with other ducts', () => {
    const session = newSession();
    session.openOnly(['drum-sander']);
    session.rest();
    session.dragGate('drum-sander', 0.5);
    session.openOnly(['planer']);
    session.rest();
    expect(session.trail.value.map(({ name }) => name)).toEqual([
      'Drum sander',
      'Thickness planer',
    ]);
    session.history.commit((shop) => ({
      ...shop,
      collector: { ...shop.collector, speedRatio: 0.8 },
    }));
    expect(session.trail.value).toEqual([]);
  });

  it('with every gate shut has nothing to try, and says so', () => {
    const session = newSession([]);
    expect(session.trail.value).toEqual([]);
    expect(session.sentence.value).toMatch(/^Nothing open/);
  });

  it('edits, takes back and makes again, a run of edits with one key as one', () => {
    const session = newSession();
    const start = session.shop.value;
    expect([session.canUndo.value, session.canRedo.value]).toEqual([false, false]);
    for (const length of [9, 10, 11]) {
      expect(session.edit(setLength('main-1', length), 'length of main-1')).toEqual([]);
    }
    const edited = session.shop.value;
    expect(session.canUndo.value).toBe(true);
    session.undo();
    expect(session.shop.value).toBe(start);
    expect([session.canUndo.value, session.canRedo.value]).toEqual([false, true]);
    session.redo();
    expect(session.shop.value).toBe(edited);
  });

  it('makes no edit that would leave the shop out of order, and says what would be wrong', () => {
    const session = newSession();
    const start = session.shop.value;
    const problems = session.edit(setLength('main-1', -1));
    expect(problems.map(({ place }) => place)).toEqual(['sections[0].length (section "main-1")']);
    expect(session.shop.value).toBe(start);
    expect(session.canUndo.value).toBe(false);
  });

  it('takes a gate out with its drop and puts it back as it stood', () => {
    const session = newSession(['planer', 'lathe']);
    session.edit(removeDrop('lathe'));
    expect(session.report.value.open).toEqual(['planer']);
    expect(session.report.value.drops).toHaveLength(session.shop.value.drops.length);
    session.undo();
    expect(session.report.value.open.toSorted()).toEqual(['lathe', 'planer']);
  });

  it('shows open gates where an edit puts them', () => {
    const session = newSession();
    session.edit(setGateTravel('planer', 0.5));
    const travel = (report: typeof session.report.value) =>
      report.drops.find(({ id }) => id === 'planer')!.travel;
    expect(travel(session.report.value)).toBe(0.5);
    expect(session.shownReport.value).toBe(session.report.value);
    session.undo();
    expect(travel(session.report.value)).toBe(1);
  });

  it('selects a part as long as it is there', () => {
    const session = newSession();
    session.select({ kind: 'drop', id: 'lathe' });
    session.edit(removeDrop('lathe'));
    expect(session.selection.value).toBeUndefined();
    session.undo();
    expect(session.selection.value).toEqual({ kind: 'drop', id: 'lathe' });
    session.select(undefined);
    expect(session.selection.value).toBeUndefined();
  });
});
