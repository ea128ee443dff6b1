// Watches a page for all that must never happen on it: messages and errors, anything that the
// content policy refused, and requests to another origin.
import type { Page } from 'playwright-core';

/** Addresses that lie within the page itself. */
const WITHIN = /^(?:data|blob):/;

/**
 * Watches a page. To be called before it is opened.
 *
 * @param page - a page that shows nothing yet
 * @param address - of the built page
 * @returns what was seen, added to as it happens
 */
export async function watchPage(page: Page, address: string): Promise<string[]> {
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !WITHIN.test(url)) complaints.push(`asked ${url}`);
  });
  await page.exposeFunction('noteViolation', (text: string) => {
    complaints.push(`violation: ${text}`);
  });
  await page.addInitScript(() => {
    const watched = globalThis as unknown as { noteViolation: (text: string) => void };
    addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
      watched.noteViolation(`${effectiveDirective} ${blockedURI}`),
    );
  });
  return complaints;
}
