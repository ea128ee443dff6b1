// The page of one shop: the sentence, the plot, the drops with their gates, the drawing, and at the
// foot what was assumed and what to beware of. It hands its session to the panels in it.

import { ContextProvider } from '@lit/context';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { openTravel } from '../../shop/gate-state.ts';
import { withGate } from '../../state/gate-positions.ts';
import type { ShopVariant } from '../../state/decisions/family.ts';
import type { Session } from '../../state/session.ts';
import '../announcer/announcer.ts';
import '../assumptions-panel/assumptions-panel.ts';
import '../cautions/cautions.ts';
import '../collector-part/collector-part.ts';
import '../conditions-part/conditions-part.ts';
import '../decisions-part/decisions-part.ts';
import type { DropGateEvent } from '../drop-row/drop-gate-event.ts';
import type { GateSetEvent } from '../gate-sets/gate-set-event.ts';
import '../drops-panel/drops-panel.ts';
import '../history-buttons/history-buttons.ts';
import type { GatesEvent } from '../gate-play/gates-event.ts';
import '../plot-foot-panel/plot-foot-panel.ts';
import '../plot-panel/plot-panel.ts';
import '../run-panel/run-panel.ts';
import '../run-part/run-part.ts';
import '../sheet-part/sheet-part.ts';
import '../steady-box/steady-box.ts';
import { sessionContext } from '../session-context.ts';
import { SessionController } from '../session-controller.ts';
import { ShelfEvent, type ShelfWish } from '../shop-list/shelf-event.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { unbroken } from '../unbroken.ts';
import '../unit-switch/unit-switch.ts';
import type { UnitsEvent } from '../unit-switch/units-event.ts';
import { GateMotion } from './gate-motion.ts';
import { loadParts } from './load-parts.ts';
import { SheetOnPaper } from './sheet-on-paper.ts';
import { whenIdle } from './when-idle.ts';
import { shopPageStyles } from './shop-page.styles.ts';

/** @element dc-shop-page */
@customElement('dc-shop-page')
export class ShopPage extends LitElement {
  static override styles = [baseStyles, buttonStyles, shopPageStyles];

  @property({ attribute: false }) session: Session | undefined;
  /** The shops of this one's family, to be compared. */
  @property({ attribute: false }) variants: readonly ShopVariant[] = [];

  readonly #provider = new ContextProvider(this, { context: sessionContext });
  readonly #words = new SessionController(
    this,
    ({ shop, sentence, units }) => ({
      name: shop.value.name,
      sentence: sentence.value,
      units: units.value,
    }),
    'to be read',
  );
  readonly #paper = new SheetOnPaper(this, () => this.session);
  #motion: GateMotion | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#motion?.stop();
  }

  protected override firstUpdated(): void {
    void loadParts().then(() => whenIdle(() => void this.#paper.load()));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('session') || !this.session) return;
    this.#motion?.stop();
    this.#motion = new GateMotion(this.session);
    this.#provider.setValue(this.session);
    this.#words.follow(this.session);
  }

  protected override render(): TemplateResult {
    const words = this.#words.value;
    if (!words) return html`${nothing}`;
    return html`<header>
        <h1>${words.name}</h1>
        <p class="product">Dropcurve</p>
        <dc-history-buttons></dc-history-buttons>
        <div class="shops">
          ${shelfButton('Shops', { kind: 'list' })}${shelfButton('Start my own', { kind: 'start' })}
        </div>
        <dc-unit-switch
          .units=${words.units}
          @dc-units=${(event: UnitsEvent) => this.#onUnits(event)}
        ></dc-unit-switch>
      </header>
      <main
        @dc-drop-gate=${(event: DropGateEvent) => this.#onGate(event)}
        @dc-gate-set=${(event: GateSetEvent) => this.#onSet(event)}
        @dc-gates=${(event: GatesEvent) => this.#onGates(event)}
        @dc-clear-trail=${() => this.session?.clearTrail()}
      >
        <div class="work">
          <div class="stage">
            <div class="sentence">
              <dc-steady-box><p>${unbroken(words.sentence)}</p></dc-steady-box>
            </div>
            <dc-plot-panel></dc-plot-panel>
          </div>
          <dc-plot-foot-panel .picture=${this.#operatingPicture}></dc-plot-foot-panel>
          <dc-drops-panel></dc-drops-panel>
          <dc-run-panel></dc-run-panel>
        </div>
        <div class="pictures">
          <dc-speeds-panel></dc-speeds-panel>
          <dc-suction-panel></dc-suction-panel>
        </div>
      </main>
      <footer>
        <dc-decisions-part .variants=${this.variants}></dc-decisions-part>
        <dc-run-part></dc-run-part>
        <dc-collector-part></dc-collector-part>
        <dc-conditions-part></dc-conditions-part>
        <dc-sheet-part @dc-print=${() => void this.#paper.print()}></dc-sheet-part>
        <dc-assumptions-panel></dc-assumptions-panel>
        <dc-cautions></dc-cautions>
      </footer>
      <dc-announcer .text=${words.sentence}></dc-announcer>`;
  }

  readonly #operatingPicture = (): SVGSVGElement | null | undefined =>
    this.renderRoot.querySelector('dc-plot-panel')?.picture;

  #onUnits({ units }: UnitsEvent): void {
    if (this.session) this.session.units.value = units;
  }

  #onGate({ drop, wish }: DropGateEvent): void {
    const { session } = this;
    if (!session) return;
    const now = session.gates.peek();
    switch (wish.kind) {
      case 'travel':
        if (wish.move === 'drag') this.#motion?.drag(drop, wish.travel);
        else this.#motion?.rest(drop, wish.travel);
        return;
      case 'only':
        session.openOnly([drop]);
        break;
      case 'shut':
        session.moveGates(withGate(now, drop, 0));
        break;
      case 'open': {
        const named = session.shop.peek().drops.find(({ id }) => id === drop);
        if (named) session.moveGates(withGate(now, drop, openTravel(named)));
      }
    }
    this.#motion?.slide();
  }

  #onGates({ gates, pace }: GatesEvent): void {
    this.session?.moveGates(gates);
    this.#motion?.slide(pace);
  }

  #onSet({ open }: GateSetEvent): void {
    this.session?.openOnly(open);
    this.#motion?.slide();
  }
}

/** Goes up to whoever holds the shelf of shops. */
function shelfButton(words: string, wish: ShelfWish): TemplateResult {
  const ask = (event: Event) => event.currentTarget?.dispatchEvent(new ShelfEvent(wish));
  return html`<button type="button" @click=${ask}><span>${words}</span></button>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-shop-page': ShopPage;
  }
}
