// The worker that answers what-if questions, so that the page stays free to move.

import { StudyDesk } from '../../state/decisions/study-desk.ts';
import type { ToWorker } from '../../state/decisions/study-messages.ts';

// A message to oneself waits behind those of the page, and isn't slowed down as a timer is.
const turn = new MessageChannel();
let goOn: () => void = () => {};
turn.port1.addEventListener('message', () => goOn());
turn.port1.start();

/** As long as a frame of the page [ms]. */
const FRAME = 17;

const desk = new StudyDesk({
  now: () => performance.now(),
  later: (next) => {
    goOn = next;
    turn.port2.postMessage(undefined);
  },
  pause: (next) => setTimeout(next, FRAME),
  post: (message) => postMessage(message),
});

addEventListener('message', (event: MessageEvent<ToWorker>) => desk.hear(event.data));
