// Where the browser for the tests is: CHROMIUM_PATH first, then the one on the PATH.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'chrome'];

/** The browser runs alone: no sandbox (root in a container has none) and no calls home. */
export const chromiumArguments = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/** The path of a Chromium, or undefined when there is none. */
export function findChromium(): string | undefined {
  const chosen = process.env['CHROMIUM_PATH'];
  if (chosen !== undefined && chosen !== '') return chosen;
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
}
