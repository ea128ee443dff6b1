import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { Pipe } from '../../src/shop/schema/section-schema.ts';
import { pipeView } from '../../src/state/run-editor/pipe-view.ts';
import type { PipeChoice } from '../../src/ui/run-editor/pipe-choice.ts';
import '../../src/ui/run-editor/pipe-choice.ts';
import type { UnitSystem } from '../../src/units/quantity.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const SEWER: Pipe = { kind: 'catalogue', family: 'pvc-sewer-d2729', size: '4in' };
const OWN: Pipe = { kind: 'custom', diameter: 0.1, roughness: 1e-4 };
const list = (name: string) => page.getByRole('combobox', { name });
const box = (name: string) => page.getByRole('textbox', { name });
const placeChoice = (pipe: Pipe, units: UnitSystem = 'us') =>
  place<PipeChoice>(
    html`<dc-pipe-choice .view=${pipeView(pipe)} .units=${units}></dc-pipe-choice>`,
  );

describe('the choice of a pipe', () => {
  it('is accessible, from the catalogue and by its diameter', async () => {
    await expectAccessible(await placeChoice(SEWER));
    await expectAccessible(await placeChoice(OWN));
  });

  it('tells the true inside of a nominal size, and where it comes from', async () => {
    await placeChoice(SEWER);
    expect(text(/^4\.07\sin\. inside · ASTM D2729/).elements()).toHaveLength(1);
  });

  it('keeps the size as near as it goes when another kind is chosen', async () => {
    const choice = await placeChoice(SEWER);
    const pipes = heard(choice, 'dc-pipe');
    await list('Kind of pipe').selectOptions('Galvanised steel, spiral');
    expect(pipes[0]?.pipe).toEqual({ kind: 'catalogue', family: 'galvanised-spiral', size: '4in' });
    expect(pipes[0]?.isChoice).toBe(true);
  });

  it('begins a pipe of one’s own with the inside of the one before', async () => {
    const choice = await placeChoice(SEWER);
    const pipes = heard(choice, 'dc-pipe');
    await list('Kind of pipe').selectOptions('Your own, by its inside diameter');
    const { pipe } = pipes[0]!;
    expect(pipe.kind === 'custom' && pipe.diameter).toBeCloseTo(pipeView(SEWER).diameter, 12);
  });

  it('takes an inside diameter in any unit, and refuses none at all', async () => {
    const choice = await placeChoice(OWN);
    const pipes = heard(choice, 'dc-pipe');
    await box('Inside diameter').fill('4 3/8');
    await userEvent.keyboard('{Enter}');
    await box('Inside diameter').fill('125 mm');
    await userEvent.keyboard('{Enter}');
    await box('Inside diameter').fill('0');
    await userEvent.keyboard('{Enter}');
    const inside = pipes.map(({ pipe }) => pipe.kind === 'custom' && pipe.diameter);
    expect(inside).toHaveLength(2);
    expect(inside[0]).toBeCloseTo(4.375 * 0.0254, 12);
    expect(inside[1]).toBeCloseTo(0.125, 12);
  });

  it('overrides the wall’s roughness, and puts it back', async () => {
    const choice = await placeChoice({ ...SEWER, roughness: 2e-4 });
    const pipes = heard(choice, 'dc-pipe');
    expect(text(/^entered, in place of/).elements()).toHaveLength(1);
    await button(/^Put back .*Roughness of the wall$/).click();
    expect(pipes[0]?.pipe).toEqual(SEWER);
  });

  it('offers the sizes of the reader’s units first', async () => {
    const lists = () => list('Size').elements() as HTMLSelectElement[];
    const first = () => lists().at(-1)?.options[0]?.text;
    const spiral: Pipe = { kind: 'catalogue', family: 'hose-wire-helix', size: '4in' };
    await placeChoice(spiral, 'us');
    expect(first()).toMatch(/in\.$/);
    await placeChoice(spiral, 'metric');
    expect(first()).toMatch(/mm$/);
  });
});
