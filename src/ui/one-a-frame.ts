// Long answers are drawn piece by piece. All that draw share one queue, since several that each draw a
// little in a frame make it long after all.

const waiting = new Set<() => void>();
let frame = 0;

/** Calls in a frame of its own, after those that wait already. */
export function inOwnFrame(call: () => void): void {
  waiting.add(call);
  if (frame === 0) frame = requestAnimationFrame(next);
}

/** Does not call after all. */
export function forgetFrame(call: () => void): void {
  waiting.delete(call);
}

function next(): void {
  frame = 0;
  const [call] = waiting;
  if (call === undefined) return;
  waiting.delete(call);
  if (waiting.size > 0) frame = requestAnimationFrame(next);
  call();
}
