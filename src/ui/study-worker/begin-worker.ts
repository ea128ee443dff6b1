// Begins the worker that answers what-if questions.

import type { StudyEars, StudyPort } from '../../state/decisions/study-client.ts';
import type { FromWorker } from '../../state/decisions/study-messages.ts';
import { beginScript } from '../script-address.ts';
// oxlint-disable-next-line import/default -- with these words behind it, Vite gives its address
import address from './study.worker.ts?worker&url';

/**
 * Begins a worker.
 *
 * @param ears - are told what it says, and if it breaks down
 * @returns the way to speak to it and to end it
 */
export function beginWorker(ears: StudyEars): StudyPort {
  const worker = beginScript(address, 'studies');
  worker.addEventListener('message', (event: MessageEvent<FromWorker>) => ears.message(event.data));
  worker.addEventListener('messageerror', () => ears.broken('what it answered can’t be read'));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    ears.broken(event.message === '' ? 'it could not be begun' : event.message);
  });
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has none
  return { post: (message) => worker.postMessage(message), end: () => worker.terminate() };
}
