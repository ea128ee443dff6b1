// Lets the page open without a network, and offers a new version when one is there. It is never put in
// place by itself: not in the midst of an edit, and not in another tab.

import type { Shelf } from '../state/shelf.ts';
import { scriptAddress } from '../ui/script-address.ts';

/** What the service worker waits for. */
const USE = 'use this version';
/** How often a page that stays open looks for a new version [ms]. */
const LOOK_EVERY = 3_600_000;

/**
 * Begins to keep the page on the device.
 *
 * @param shelf - whose line says that a new version is there
 */
export async function keepOffline(shelf: Shelf): Promise<void> {
  const { serviceWorker } = navigator as { readonly serviceWorker?: ServiceWorkerContainer };
  if (!serviceWorker || !location.protocol.startsWith('http')) return;
  try {
    const registration = await serviceWorker.register(scriptAddress('./sw.js'));
    watch(registration, serviceWorker, shelf);
  } catch {
    // The page works all the same, as long as there is a network.
  }
}

function watch(
  registration: ServiceWorkerRegistration,
  container: ServiceWorkerContainer,
  shelf: Shelf,
): void {
  const offer = () => {
    // Without a former version there is nothing that it would take the place of.
    if (registration.waiting && container.controller) offerVersion(registration, container, shelf);
  };
  offer();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer);
  });
  let lastLook = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' || Date.now() - lastLook < LOOK_EVERY) return;
    lastLook = Date.now();
    registration.update().catch(() => {}); // no network, or no server
  });
}

function offerVersion(
  registration: ServiceWorkerRegistration,
  container: ServiceWorkerContainer,
  shelf: Shelf,
): void {
  const use = async () => {
    shelf.settle();
    await shelf.idle();
    const { waiting } = registration;
    if (!waiting) location.reload();
    container.addEventListener('controllerchange', () => location.reload(), { once: true });
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has none
    waiting?.postMessage(USE);
  };
  shelf.say({
    text: 'A new version of this page is ready. It is used from the next visit on, or now; nothing that you entered is lost.',
    action: { words: 'Use it now', act: () => void use() },
  });
}
