// Starts the Chromium that the end-to-end tests and the pictures share.
import { chromium, type Browser } from 'playwright-core';
import { chromiumArguments, findChromium } from './find-chromium.ts';

/** With further switches of its command line, if any. */
export async function launchChromium(switches: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('no Chromium on the PATH');
  return chromium.launch({ executablePath, args: [...chromiumArguments, ...switches] });
}
