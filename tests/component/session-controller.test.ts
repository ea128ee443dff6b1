// How often panels are drawn while one change follows another, and that the last change is never missed.
import { html, LitElement } from 'lit';
import { afterEach, describe, it } from 'vitest';
import { Session } from '../../src/state/session.ts';
import { type Promptness, SessionController } from '../../src/ui/session-controller.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { expect } from './harness.ts';
import { makeChangesTake } from './slow-processor.ts';
import { placeUnder } from './with-session.ts';

const STEPS = 28;
/** Turns come once in so many frames. */
const ROUND = 14;
/** After such a pause the last change was read, and the next is taken for a first one [ms]. */
const LATE = 50;

abstract class ReadingPanel extends LitElement {
  reads = 0;
  protected readonly what: 'all' | 'the name' = 'all';
  protected abstract readonly promptness: Promptness;
  controller: SessionController<string> | undefined;

  override connectedCallback(): void {
    this.controller ??= new SessionController(
      this,
      ({ shop, shownReport }) => {
        this.reads += 1;
        if (this.what === 'the name') return shop.value.name;
        return `${shop.value.name} ${shownReport.value.operatingPoint?.flow}`;
      },
      this.promptness,
    );
    super.connectedCallback();
  }

  protected override render() {
    return html`<p>${this.controller?.value}</p>`;
  }
}
class PromptPanel extends ReadingPanel {
  protected readonly promptness = 'at once';
}
class SeenPanel extends ReadingPanel {
  protected readonly promptness = 'when seen';
}
class StepPanel extends ReadingPanel {
  protected readonly promptness = 'in step';
}
class AblePanel extends ReadingPanel {
  protected readonly promptness = 'as it can';
}
class TurnPanel extends ReadingPanel {
  protected readonly promptness = { turn: 2 } as const;
}
class WordsPanel extends ReadingPanel {
  protected readonly promptness = 'to be read';
}
class NamePanel extends WordsPanel {
  protected override readonly what = 'the name';
}
customElements.define('name-panel', NamePanel);
customElements.define('prompt-panel', PromptPanel);
customElements.define('seen-panel', SeenPanel);
customElements.define('step-panel', StepPanel);
customElements.define('able-panel', AblePanel);
customElements.define('turn-panel', TurnPanel);
customElements.define('words-panel', WordsPanel);
declare global {
  interface HTMLElementTagNameMap {
    'prompt-panel': PromptPanel;
    'seen-panel': SeenPanel;
    'step-panel': StepPanel;
    'able-panel': AblePanel;
    'turn-panel': TurnPanel;
    'words-panel': WordsPanel;
    'name-panel': NamePanel;
  }
}

type Panel =
  | 'prompt-panel'
  | 'seen-panel'
  | 'step-panel'
  | 'able-panel'
  | 'turn-panel'
  | 'words-panel'
  | 'name-panel';
const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
const said = (panel: ReadingPanel) => panel.renderRoot.textContent?.trim();
const now = ({ shop, shownReport }: Session) =>
  `${shop.peek().name} ${shownReport.peek().operatingPoint?.flow}`;

const CHANGES = {
  'a gate that is dragged': (session: Session, step: number) =>
    session.dragGate('planer', 0.3 + step / 100),
  'a document that is edited as in a drag': (session: Session, step: number) =>
    void session.edit((shop) => ({ ...shop, name: `Step ${step}` }), 'drag'),
};

async function after(change: (session: Session, step: number) => void, name: Panel) {
  const session = new Session(demoShop(), ['planer'], 'us');
  const panel = await placeUnder(session, name);
  await frame();
  panel.reads = 0;
  let late = 0;
  let changedAt = performance.now();
  for (let step = 0; step < STEPS; step++) {
    change(session, step);
    await frame();
    if (performance.now() - changedAt > LATE) late += 1;
    changedAt = performance.now();
  }
  return { session, panel, reads: panel.reads, late };
}

describe.each(Object.entries(CHANGES))('a panel beside %s', (_, change) => {
  it('is drawn at every change, if it is prompt', async () => {
    const { session, panel, reads } = await after(change, 'prompt-panel');
    expect(reads).toBe(STEPS);
    expect(said(panel)).toBe(now(session));
  });

  it('is drawn at every change, if it is seen', async () => {
    const { reads } = await after(change, 'seen-panel');
    expect(reads).toBe(STEPS);
  });

  it('is drawn at every second change, if it goes in step, and a last time at rest', async () => {
    const { session, panel, reads, late } = await after(change, 'step-panel');
    expect(reads).toBeGreaterThanOrEqual(STEPS / 2);
    expect(reads).toBeLessThanOrEqual(STEPS / 2 + 2 * late);
    await expect.poll(() => said(panel)).toBe(now(session));
  });

  it('takes turns, and is drawn a last time at rest', async () => {
    const { session, panel, reads, late } = await after(change, 'turn-panel');
    expect(reads).toBeGreaterThan(1);
    expect(reads).toBeLessThanOrEqual(STEPS / ROUND + 1 + 2 * late);
    await expect.poll(() => said(panel)).toBe(now(session));
  });

  it('is drawn as often as words can be read, and a last time at rest', async () => {
    const { session, panel, reads, late } = await after(change, 'words-panel');
    expect(reads).toBeGreaterThan(1);
    expect(reads).toBeLessThanOrEqual(STEPS / ROUND + 1 + 2 * late);
    await expect.poll(() => said(panel)).toBe(now(session));
  });

  it('sleeps out of sight until there is rest', async () => {
    const session = new Session(demoShop(), ['planer'], 'us');
    const panel = await placeUnder(session, 'seen-panel');
    panel.style.cssText = 'position: absolute; inset-block-start: 5000px';
    await frame();
    await frame();
    change(session, 0);
    panel.reads = 0;
    for (let step = 1; step < STEPS; step++) {
      change(session, step);
      await frame();
    }
    expect(panel.reads).toBe(0);
    await expect.poll(() => said(panel)).toBe(now(session));
  });
});

describe('a panel whose words stay as they are', () => {
  it('keeps count of the changes, and so its turn', async () => {
    const { 'a gate that is dragged': drag } = CHANGES;
    const { reads } = await after(drag, 'name-panel');
    expect(reads).toBeGreaterThanOrEqual(STEPS / ROUND);
  });
});

describe('a panel that is drawn as it can', () => {
  const { 'a gate that is dragged': drag } = CHANGES;
  afterEach(() => makeChangesTake(0));

  it('is drawn at every change where there is time for it', async () => {
    const { reads } = await after(drag, 'able-panel');
    expect(reads).toBe(STEPS);
  });

  it('is drawn at every third one on a slow processor, and a last time at rest', async () => {
    makeChangesTake(2);
    const { session, panel, reads, late } = await after(drag, 'able-panel');
    expect(reads).toBeGreaterThanOrEqual(Math.floor(STEPS / 3));
    expect(reads).toBeLessThanOrEqual(STEPS / 3 + 1 + 2 * late);
    await expect.poll(() => said(panel)).toBe(now(session));
  });
});
