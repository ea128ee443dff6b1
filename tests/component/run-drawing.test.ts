import { describe, it } from 'vitest';
import type { SectionView } from '../../src/state/run-view.ts';
import '../../src/ui/run-drawing/run-drawing.ts';
import { expect, expectAccessible, html, picture, place, text } from './harness.ts';

const section = (part: Partial<SectionView>): SectionView => ({
  id: '',
  name: '',
  into: 0,
  straight: false,
  diameter: 0.15,
  size: '150 mm',
  length: '3 m',
  state: 'still',
  speed: '',
  drop: undefined,
  ...part,
});
const sections = [
  section({ into: -1, state: 'settles', speed: '11.7' }),
  section({ straight: true, state: 'settles', speed: '11.2', drop: 'Lathe' }),
  section({ drop: 'Planer' }),
];
const placeDrawing = () =>
  place(
    html`<dc-run-drawing
      label="Line drawing of the ducts"
      speed-unit="m/s"
      .sections=${sections}
    ></dc-run-drawing>`,
  );

describe('the drawing of the run', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeDrawing());
  });

  it('is a picture, with a key in words and the drops’ names on it', async () => {
    await placeDrawing();
    expect(picture('Line drawing of the ducts').elements()).toHaveLength(1);
    for (const words of [
      'Lathe',
      'Planer',
      'speed in m/s',
      'carries',
      'chips settle',
      'tight',
      'still',
      '11.7',
    ]) {
      expect(text(words).elements().length, words).toBeGreaterThanOrEqual(1);
    }
  });

  it('draws nothing of an empty run', async () => {
    await place(html`<dc-run-drawing .sections=${[]}></dc-run-drawing>`);
    expect(picture(/./).elements()).toHaveLength(0);
  });
});
