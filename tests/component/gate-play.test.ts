import { describe, it } from 'vitest';
import type { GatePositions } from '../../src/state/gate-positions.ts';
import type { GatePlay } from '../../src/ui/gate-play/gate-play.ts';
import '../../src/ui/gate-play/gate-play.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const drops = ['saw', 'lathe'].map((id) => ({ id, name: id, gate: { travel: 1 } }));
const atFirst: GatePositions = new Map([['lathe', 1]]);

/** A play whose wishes are granted, as the page grants them. */
async function placePlay() {
  const play = await place<GatePlay>(
    html`<dc-gate-play .drops=${drops} .gates=${atFirst} slow="saw"></dc-gate-play>`,
  );
  play.addEventListener('dc-gates', ({ gates }) => {
    play.gates = gates;
  });
  return { play, wishes: heard(play, 'dc-gates') };
}
const open = (gates: GatePositions) => Object.fromEntries(gates);
const next = () => button('Next step of the play').click();

describe('the play of the gates', () => {
  it('is accessible, at rest and while it plays', async () => {
    const { play } = await placePlay();
    await expectAccessible(play);
    await next();
    await expectAccessible(play);
  });

  it('goes a step on and a step back, and says which one it is at', async () => {
    const { wishes } = await placePlay();
    expect((button('Step back').element() as HTMLButtonElement).disabled).toBe(true);
    await next();
    await next();
    await next();
    await button('Step back').click();
    expect(wishes.map(({ gates }) => open(gates))).toEqual([
      {},
      { saw: 1 },
      { saw: 1, lathe: 1 },
      { saw: 1 },
    ]);
    expect(wishes.every(({ pace }) => pace === 'usual')).toBe(true);
    expect(text('2/8').elements()).toHaveLength(1);
    expect(text(/Step 2 of 8: saw open/).elements()).toHaveLength(1);
  });

  it('plays by itself until it is paused', async () => {
    const { wishes } = await placePlay();
    await button('Play the gates').click();
    await expect.poll(() => wishes.length, { timeout: 4000 }).toBeGreaterThanOrEqual(2);
    await button('Pause').click();
    const stopped = wishes.length;
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(wishes).toHaveLength(stopped);
    expect(wishes[0]!.pace).toEqual({ evenly: 500 });
  });

  it('puts the gates back to where they were', async () => {
    const { wishes } = await placePlay();
    await next();
    await next();
    await button('Put back the gates').click();
    expect(wishes.at(-1)!.gates).toBe(atFirst);
    await drawn();
    expect(button('Put back the gates').elements()).toHaveLength(0);
  });

  it('is over as soon as a hand moves a gate', async () => {
    const { play } = await placePlay();
    await next();
    play.gates = new Map([['saw', 0.3]]);
    await drawn();
    expect(button('Put back the gates').elements()).toHaveLength(0);
  });
});
