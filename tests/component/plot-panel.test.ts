import { describe, it } from 'vitest';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/plot-panel/plot-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, picture } from './harness.ts';
import { placeUnder } from './with-session.ts';

async function placePanel(open: readonly string[] = ['planer']) {
  const session = new Session(demoShop(), open, 'us');
  const panel = await placeUnder(session, 'dc-plot-panel');
  panel.style.setProperty('block-size', '360px');
  await drawn();
  return { session, panel };
}
/** The flow that is written at the point. */
const flow = (panel: { readonly picture: SVGSVGElement | null | undefined }) =>
  panel.picture?.querySelector('.flow-number')?.textContent;

describe('the operating plot of a session', () => {
  it('is accessible, with a point and without', async () => {
    await expectAccessible((await placePanel()).panel);
    await expectAccessible((await placePanel([])).panel);
  });

  it('tells the picture in the page’s sentence, and writes the point’s flow', async () => {
    const { session, panel } = await placePanel();
    expect(
      picture(`Collector curve and duct curve. ${session.sentence.value}`).elements(),
    ).toHaveLength(1);
    const { flow: solved } = session.report.value.operatingPoint!;
    expect(flow(panel)).toContain(Math.round(solved / 4.719474432e-4).toLocaleString('en-US'));
  });

  it('moves its point with the gates and leaves a mark where it was', async () => {
    const { session, panel } = await placePanel();
    const before = flow(panel);
    session.openOnly(['table-saw', 'blade-guard']);
    session.showGates(session.gates.peek());
    session.rest();
    await expect.poll(() => panel.picture?.querySelectorAll('.tried').length).toBe(1);
    await expect.poll(() => flow(panel)).not.toBe(before);
  });

  it('shows what leaks in where every gate is shut', async () => {
    const { panel } = await placePanel([]);
    expect(picture(/Nothing open: \d+\scfm leaks in/).elements()).toHaveLength(1);
    expect(flow(panel)).toMatch(/^\d{2,3} cfm$/);
  });

  it('writes in the other units once they are chosen', async () => {
    const { session, panel } = await placePanel();
    expect(flow(panel)).toContain('cfm');
    session.units.value = 'metric';
    await drawn();
    expect(flow(panel)).toContain('m³/h');
  });
});
