// Lets others read signals without knowing of them.

import { effect } from '@preact/signals-core';

/**
 * Reads now, and again whenever something that was read has changed.
 *
 * @param read - reads signals
 * @param take - gets what was read, each time
 * @returns ends it
 */
export function follow<T>(read: () => T, take: (value: T) => void): () => void {
  return effect(() => take(read()));
}
