import { describe, it } from 'vitest';
import '../../src/ui/steady-box/steady-box.ts';
import { expect, expectAccessible, html, place } from './harness.ts';

const line = (words: string) =>
  html`<dc-steady-box><p style="margin: 0; line-height: 20px; white-space: pre">${words}</p></dc-steady-box>`;
const twoFrames = () =>
  new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));

describe('a box that keeps its height', () => {
  it('is accessible', async () => {
    await expectAccessible(await place(line('Chips carry.')));
  });

  it('is as high as what lies in it, and contains its layout', async () => {
    const box = await place(line('Chips carry.'));
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(20);
    expect(getComputedStyle(box).contain).toContain('size');
  });

  it('grows and shrinks after its content, a frame later', async () => {
    const box = await place(line('Chips carry.'));
    await twoFrames();
    const words = box.querySelector('p')!;
    words.textContent = 'Chips settle\nin the main.';
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(40);
    words.textContent = 'Chips carry.';
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(20);
  });
});
