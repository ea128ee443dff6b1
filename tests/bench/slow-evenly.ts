// Slows the page's processor evenly. Chromium slows it from a thread of its own that stops the page's
// thread every fraction of a millisecond; on a machine with few processors that thread waits for its
// turn behind those that draw, and then lets some frames run at full speed and makes others up to ten
// times as slow. So it is given precedence over all others, as far as the system permits.

import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import type { CDPSession } from 'playwright-core';

/** As Linux cuts its name, `CPUThrottlingThread`. */
const SLOWING_THREAD = 'CPUThrottlingTh';

/**
 * Makes the page's processor slower.
 *
 * @param client - of the page
 * @param rate - as Chromium counts; 1 for its own speed
 */
export async function slowEvenly(client: CDPSession, rate: number): Promise<void> {
  await client.send('Emulation.setCPUThrottlingRate', { rate });
  if (rate === 1) return;
  const threads = await slowingThreads();
  const isFirst = threads.map((id) => spawnSync('chrt', ['--fifo', '-p', '50', id]).status === 0);
  if (isFirst.length === 0 || isFirst.includes(false)) {
    console.warn(
      'bench: the processor is slowed unevenly; frames at the 99th percentile say little',
    );
  }
}

async function slowingThreads(): Promise<string[]> {
  for (let look = 0; look < 20; look++) {
    const found = processes().flatMap((id) =>
      namesOf(id).filter(([, name]) => name === SLOWING_THREAD),
    );
    if (found.length > 0) return found.map(([id]) => id);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return [];
}

function processes(): string[] {
  try {
    return readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  } catch {
    return []; // not Linux
  }
}

/** The threads of a process with their names; none if it has ended. */
function namesOf(id: string): [string, string][] {
  try {
    return readdirSync(`/proc/${id}/task`).map((thread) => [
      thread,
      readFileSync(`/proc/${id}/task/${thread}/comm`, 'utf8').trim(),
    ]);
  } catch {
    return [];
  }
}
