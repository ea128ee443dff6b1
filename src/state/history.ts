// Undo and redo over immutable documents: a list of earlier ones and a list of those taken back.
// A drag or a run of keys gives many edits with one merge key, and they are undone as one.

import { computed, type ReadonlySignal, signal } from '@preact/signals-core';

interface Timeline<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** Key that the next edit may bear to be merged with the last one. */
  readonly mergeKey: string | undefined;
}

/** The present document with its past. Holds at most `limit` earlier documents. */
export class History<T> {
  readonly present: ReadonlySignal<T>;
  /** What undo leads back to; undefined where there is nothing to undo. */
  readonly previous: ReadonlySignal<T | undefined>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;

  readonly #timeline;
  readonly #limit: number;

  /**
   * @param start - the document to begin with
   * @param limit - how many earlier documents are kept, 1 or more [-]
   * @throws RangeError if the limit is below 1
   */
  constructor(start: T, limit = 200) {
    if (!(limit >= 1)) throw new RangeError(`a history must keep 1 document or more, not ${limit}`);
    this.#limit = limit;
    this.#timeline = signal<Timeline<T>>({
      past: [],
      present: start,
      future: [],
      mergeKey: undefined,
    });
    this.present = computed(() => this.#timeline.value.present);
    this.previous = computed(() => this.#timeline.value.past.at(-1));
    this.canUndo = computed(() => this.#timeline.value.past.length > 0);
    this.canRedo = computed(() => this.#timeline.value.future.length > 0);
  }

  /**
   * Makes an edit. One that returns the same document is no edit and leaves no trace.
   *
   * @param edit - from the present document to the next
   * @param mergeKey - edits that follow one another with the same key are undone as one
   */
  commit(edit: (document: T) => T, mergeKey?: string): void {
    const now = this.#timeline.peek();
    const next = edit(now.present);
    if (next === now.present) return;
    const merges = mergeKey !== undefined && mergeKey === now.mergeKey;
    this.#timeline.value = {
      past: merges ? now.past : [...now.past, now.present].slice(-this.#limit),
      present: next,
      future: [],
      mergeKey,
    };
  }

  /** Ends a run of merged edits: the next one is undone by itself. */
  seal(): void {
    const now = this.#timeline.peek();
    if (now.mergeKey !== undefined) this.#timeline.value = { ...now, mergeKey: undefined };
  }

  /** Takes the last edit back; nothing happens where there is none. */
  undo(): void {
    const { past, present, future } = this.#timeline.peek();
    const before = past.at(-1);
    if (before === undefined) return;
    this.#timeline.value = {
      past: past.slice(0, -1),
      present: before,
      future: [present, ...future],
      mergeKey: undefined,
    };
  }

  /** Makes the edit again that was taken back last. */
  redo(): void {
    const { past, present, future } = this.#timeline.peek();
    const [after, ...rest] = future;
    if (after === undefined) return;
    this.#timeline.value = {
      past: [...past, present],
      present: after,
      future: rest,
      mergeKey: undefined,
    };
  }
}
