import { describe, it, vi } from 'vitest';
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

  it('grows a frame after its content, and shrinks when changes have stopped', async () => {
    const box = await place(line('Chips carry.'));
    await twoFrames();
    const words = box.querySelector('p')!;
    words.textContent = 'Chips settle\nin the main.';
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(40);
    words.textContent = 'Chips carry.';
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(40);
    await vi.waitFor(() => expect(box.getBoundingClientRect().height).toBe(20));
  });

  it('follows at once where it becomes wider', async () => {
    const words = html`<p style="margin: 0; line-height: 20px; inline-size: 100%">Chips carry.</p>`;
    const narrow = await place<HTMLElement>(
      html`<div style="inline-size: 4ch"><dc-steady-box>${words}</dc-steady-box></div>`,
    );
    const box = narrow.querySelector('dc-steady-box')!;
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(40);
    narrow.style.inlineSize = '40ch';
    await twoFrames();
    expect(box.getBoundingClientRect().height).toBe(20);
  });

  it('stays as high as it is where its content grows again meanwhile', async () => {
    const box = await place(line('Chips settle\nin the main.'));
    await twoFrames();
    const words = box.querySelector('p')!;
    words.textContent = 'Chips carry.';
    await twoFrames();
    words.textContent = 'Chips settle\nin a branch.';
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(box.getBoundingClientRect().height).toBe(40);
  });
});
