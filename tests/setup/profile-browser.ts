// A Chromium with a profile of its own on the disk, in a process that a test may kill and start again
// on the same profile, as a machine that loses its power does.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { chromiumArguments, findChromium } from './find-chromium.ts';

/** How long it may take to answer once it runs [ms]. */
const PATIENCE = 20_000;
const READY = /DevTools listening on (ws:\S+)/;

export class ProfileBrowser {
  readonly #folder = mkdtempSync(join(tmpdir(), 'dropcurve-profile-'));
  #process: ChildProcess | undefined;
  #browser: Browser | undefined;

  /** Starts the browser, or starts it again after it was killed; once more where it does not answer. */
  async start(): Promise<BrowserContext> {
    try {
      return await this.#startOnce();
    } catch {
      await this.kill();
      return this.#startOnce();
    }
  }

  async #startOnce(): Promise<BrowserContext> {
    const program = findChromium();
    if (program === undefined) throw new Error('no Chromium on the PATH');
    const options = [
      ...chromiumArguments,
      '--headless=new',
      '--remote-debugging-port=0',
      '--no-default-browser-check',
      `--user-data-dir=${this.#folder}`,
    ];
    // A group of its own, so that all its processes can be ended by one id.
    this.#process = spawn(program, options, {
      detached: true,
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    const address = await addressOf(this.#process);
    this.#browser = await chromium.connectOverCDP(address, { timeout: PATIENCE });
    const [context] = this.#browser.contexts();
    if (!context) throw new Error('the browser has no context');
    return context;
  }

  /** Ends every process of the browser at once, without a word. */
  async kill(): Promise<void> {
    const { pid } = this.#process ?? {};
    if (this.#process === undefined || pid === undefined) return;
    if (this.#process.exitCode === null && this.#process.signalCode === null) {
      const ended = once(this.#process, 'exit');
      process.kill(-pid, 'SIGKILL');
      await ended;
    }
    this.#process = undefined;
    await this.#browser?.close().catch(() => {});
  }

  /** Ends the browser and takes its profile away. */
  async end(): Promise<void> {
    await this.kill();
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** Whatever it says after that is read too, or the pipe would fill and the browser wait. */
function addressOf({ stderr }: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    if (!stderr) throw new Error('the browser says nothing');
    const lines = createInterface(stderr);
    lines.on('line', (line) => {
      const address = READY.exec(line)?.[1];
      if (address !== undefined) resolve(address);
    });
    lines.on('close', () => reject(new Error('the browser did not start')));
  });
}
