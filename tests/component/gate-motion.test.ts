// When a gate follows the hand.
import { describe, it } from 'vitest';
import { Session } from '../../src/state/session.ts';
import { GateMotion } from '../../src/ui/shop-page/gate-motion.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { expect } from './harness.ts';

const [drop] = demoShop().drops;

function dragged() {
  const session = new Session(demoShop(), [drop!.id], 'us');
  const motion = new GateMotion(session);
  return { session, motion, travel: () => session.gates.peek().get(drop!.id) };
}

describe('a gate under the hand', () => {
  it('is moved as soon as the hand is heard of', () => {
    const { motion, travel } = dragged();
    motion.drag(drop!.id, 0.4);
    expect(travel()).toBe(0.4);
  });

  it('takes the last of the moves within one frame, at the next', async () => {
    const { motion, travel } = dragged();
    for (const at of [0.4, 0.5, 0.6]) motion.drag(drop!.id, at);
    expect(travel()).toBe(0.4);
    await expect.poll(travel).toBe(0.6);
  });

  it('is where the hand let it go, whatever waited', async () => {
    const { motion, travel } = dragged();
    for (const at of [0.4, 0.5]) motion.drag(drop!.id, at);
    motion.rest(drop!.id, 0.7);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(travel()).toBe(0.7);
  });
});
