import { describe, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { Gate } from '../../src/ui/gate/gate.ts';
import '../../src/ui/gate/gate.ts';
import { drawn, expect, expectAccessible, heard, html, place, slider } from './harness.ts';

const placeGate = (travel = 0) =>
  place<Gate>(html`<dc-gate label="Planer" travel=${travel}></dc-gate>`);
const valueText = (name: string) => slider(name).element().getAttribute('aria-valuetext');

describe('a gate', () => {
  it('is accessible', async () => {
    const gate = await placeGate(0.5);
    await expectAccessible(gate);
  });

  it('is a slider that says in words how far it is open', async () => {
    await placeGate(0.5);
    expect(valueText('Gate, Planer')).toBe('half open');
    expect(slider('Gate, Planer').element().getAttribute('aria-valuenow')).toBe('50');
  });

  it('is worked by keys alone', async () => {
    const gate = await placeGate(0);
    const moves = heard(gate, 'dc-gate-move');
    await userEvent.tab();
    for (const key of ['{End}', '{Home}', '{ArrowRight}', '{ArrowUp}', '{PageUp}', '{ArrowLeft}']) {
      await userEvent.keyboard(key);
    }
    await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
    expect(moves.map(({ travel }) => travel)).toEqual([1, 0, 0.01, 0.02, 0.12, 0.11, 0.21]);
    expect(moves.every(({ move }) => move === 'step')).toBe(true);
    await drawn();
    expect(valueText('Gate, Planer')).toBe('21 % open');
  });

  it('stops at its ends', async () => {
    const gate = await placeGate(1);
    const moves = heard(gate, 'dc-gate-move');
    await userEvent.tab();
    await userEvent.keyboard('{PageUp}{ArrowRight}');
    expect(moves.map(({ travel }) => travel)).toEqual([1, 1]);
  });

  it('leaves other keys to the page', async () => {
    const gate = await placeGate(0);
    const moves = heard(gate, 'dc-gate-move');
    await userEvent.tab();
    await userEvent.keyboard('a{Enter}{Control>}{ArrowRight}{/Control}');
    expect(moves).toHaveLength(0);
  });

  it('follows a dragging hand, then comes to rest', async () => {
    const gate = await placeGate(0);
    const moves = heard(gate, 'dc-gate-move');
    const target = slider('Gate, Planer').element();
    const { left, top } = target.getBoundingClientRect();
    const point = (type: string, x: number) =>
      target.dispatchEvent(
        new PointerEvent(type, {
          bubbles: true,
          pointerId: 1,
          clientX: left + x,
          clientY: top + 20,
        }),
      );
    target.setPointerCapture = () => {};
    point('pointerdown', 66);
    point('pointermove', 66 + 9);
    point('pointermove', 66 + 18);
    point('pointermove', 66 + 400);
    point('pointerup', 66 + 400);
    expect(moves.map(({ travel }) => travel)).toEqual([0.25, 0.5, 1, 1]);
    expect(moves.map(({ move }) => move)).toEqual(['drag', 'drag', 'drag', 'rest']);
  });

  it('asks for the other end when tapped', async () => {
    const gate = await placeGate(0);
    const moves = heard(gate, 'dc-gate-move');
    await slider('Gate, Planer').click();
    gate.travel = 0.4;
    await drawn();
    await slider('Gate, Planer').click();
    expect(moves.map(({ travel, move }) => [travel, move])).toEqual([
      [1, 'tap'],
      [0, 'tap'],
    ]);
  });

  it('is put back when the page scrolls under the finger', async () => {
    const gate = await placeGate(0.25);
    const moves = heard(gate, 'dc-gate-move');
    const target = slider('Gate, Planer').element();
    target.setPointerCapture = () => {};
    const init = { bubbles: true, pointerId: 1, clientY: 0 };
    target.dispatchEvent(new PointerEvent('pointerdown', { ...init, clientX: 100 }));
    target.dispatchEvent(new PointerEvent('pointermove', { ...init, clientX: 109 }));
    target.dispatchEvent(new PointerEvent('pointercancel', init));
    expect(moves.map(({ travel }) => travel)).toEqual([0.5, 0.25]);
  });

  it('is put back by Escape during a drag', async () => {
    const gate = await placeGate(0.25);
    const moves = heard(gate, 'dc-gate-move');
    const target = slider('Gate, Planer').element() as HTMLElement;
    target.setPointerCapture = () => {};
    target.focus();
    const init = { bubbles: true, pointerId: 1, clientY: 0 };
    target.dispatchEvent(new PointerEvent('pointerdown', { ...init, clientX: 100 }));
    target.dispatchEvent(new PointerEvent('pointermove', { ...init, clientX: 118 }));
    await userEvent.keyboard('{Escape}');
    target.dispatchEvent(new PointerEvent('pointermove', { ...init, clientX: 130 }));
    expect(moves.map(({ travel }) => travel)).toEqual([0.75, 0.25]);
    expect(moves.at(-1)?.move).toBe('rest');
  });

  it('is at least as large as a thumb needs', async () => {
    await placeGate();
    const { width, height } = slider('Gate, Planer').element().getBoundingClientRect();
    expect(width).toBeGreaterThanOrEqual(44);
    expect(height).toBeGreaterThanOrEqual(44);
  });
});
