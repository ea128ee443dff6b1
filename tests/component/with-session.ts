// Puts a panel on the page under a session, as the page of a shop does.
import { ContextProvider } from '@lit/context';
import { LitElement } from 'lit';
import type { Session } from '../../src/state/session.ts';
import { sessionContext } from '../../src/ui/session-context.ts';
import { html, place } from './harness.ts';

class SessionHost extends LitElement {
  readonly provider = new ContextProvider(this, { context: sessionContext });

  protected override createRenderRoot(): this {
    return this;
  }
}
customElements.define('session-host', SessionHost);

/** Places an element by its tag name in a host that hands it the session; it may be given more before. */
export async function placeUnder<K extends keyof HTMLElementTagNameMap>(
  session: Session,
  name: K,
  prepare: (element: HTMLElementTagNameMap[K]) => void = () => {},
): Promise<HTMLElementTagNameMap[K]> {
  const host = await place<SessionHost>(html`<session-host></session-host>`);
  host.provider.setValue(session);
  const element = document.createElement(name);
  prepare(element);
  host.append(element);
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  return element;
}
