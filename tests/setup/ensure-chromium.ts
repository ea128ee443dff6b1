// Sees to it that a Chromium is there: as root from Debian's packages, otherwise by asking.
import { spawnSync } from 'node:child_process';
import { findChromium } from './find-chromium.ts';

const install = 'apt-get update && apt-get install -y chromium';

/** Whether the browser tests can run. Says in one line what to do when they can't. */
export function ensureChromium(): boolean {
  if (findChromium() !== undefined) return true;
  if (process.getuid?.() === 0) {
    console.log(`No Chromium found. Installing it: ${install}`);
    spawnSync('sh', ['-c', install], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (findChromium() !== undefined) return true;
  }
  console.log(
    'The tests need Chromium: install the Debian package `chromium`, or set CHROMIUM_PATH.',
  );
  return false;
}
