// The state before the last change: of gates that come to rest, of edits alone and in runs.
import { describe, expect, it } from 'vitest';
import { onSection } from '../../../src/shop/edits/change.ts';
import { Session } from '../../../src/state/session.ts';
import { demoShop } from './demo-shop.ts';

const begin = () => new Session(demoShop(), ['planer'], 'us');
const longer = (length: number) => onSection('planer', (section) => ({ ...section, length }));
const speedOf = (state: Session['former']['value'], id = 'planer') =>
  state?.report.drops.find((drop) => drop.id === id)?.velocity;
const speedNow = (session: Session) =>
  speedOf({ shop: session.shop.value, report: session.report.value });

describe('the state before the last change', () => {
  it('is none at first, and none after what changes no figure', () => {
    const session = begin();
    expect(session.former.value).toBeUndefined();
    session.edit((shop) => ({ ...shop, name: 'Another name' }));
    session.openOnly(['planer']);
    session.showGates(session.gates.value);
    session.rest();
    expect(session.former.value).toBeUndefined();
  });

  it('is where the gates started from, on the way and at rest', () => {
    const session = begin();
    const before = speedNow(session);
    session.dragGate('floor-sweep', 0.4);
    expect(speedOf(session.former.value)).toBe(before);
    session.dragGate('floor-sweep', 0.8);
    session.rest();
    expect(speedOf(session.former.value)).toBe(before);
    expect(speedNow(session)).not.toBe(before);
  });

  it('is the one before an edit, and before a whole run of merged ones', () => {
    const session = begin();
    const before = speedNow(session);
    session.edit(longer(3), 'length');
    const between = speedNow(session);
    session.edit(longer(9), 'length');
    expect(speedOf(session.former.value)).toBe(before);
    session.edit(longer(12));
    expect(speedOf(session.former.value)).not.toBe(between);
    expect(speedOf(session.former.value)).toBeLessThan(before!);
  });

  it('is what was taken back, after undo', () => {
    const session = begin();
    session.edit(longer(9));
    const edited = speedNow(session);
    session.undo();
    expect(speedOf(session.former.value)).toBe(edited);
  });

  it('is forgotten when it is dismissed, until the next change', () => {
    const session = begin();
    session.edit(longer(9));
    session.dismissFormer();
    expect(session.former.value).toBeUndefined();
    session.edit((shop) => ({ ...shop, name: 'Another name' }));
    expect(session.former.value).toBeUndefined();
    session.undo();
    session.undo();
    expect(session.former.value).toBeDefined();
  });
});
