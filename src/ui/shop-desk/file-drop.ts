// A file that is held over the window and dropped anywhere on it.

import type { ReactiveController } from 'lit';

/** What is done with a file. */
export interface FileDropWishes {
  /** Told when a file comes over the window, and when it has gone. */
  readonly over: (isOver: boolean) => void;
  readonly dropped: (file: File) => void;
}

export class FileDrop implements ReactiveController {
  readonly #wishes: FileDropWishes;

  /** @param wishes - what is done with a file */
  constructor(wishes: FileDropWishes) {
    this.#wishes = wishes;
  }

  hostConnected(): void {
    addEventListener('dragover', this.#onDragOver);
    addEventListener('dragleave', this.#onDragLeave);
    addEventListener('drop', this.#onDrop);
  }

  hostDisconnected(): void {
    removeEventListener('dragover', this.#onDragOver);
    removeEventListener('dragleave', this.#onDragLeave);
    removeEventListener('drop', this.#onDrop);
  }

  readonly #onDragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    this.#wishes.over(true);
  };

  readonly #onDragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.#wishes.over(false);
  };

  readonly #onDrop = (event: DragEvent): void => {
    this.#wishes.over(false);
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    this.#wishes.dropped(file);
  };
}
