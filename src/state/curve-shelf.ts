// The user's own curves, kept in this browser. What is deleted can be put back; a record that can't be
// opened is left as it is; a file that is refused changes nothing.

import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import { openCurves } from '../shop/curves/curve-files.ts';
import { openCurveDocument } from '../shop/open-curve.ts';
import type { Curve } from '../shop/schema/curve-schema.ts';
import type { TextFile } from '../shop/shop-file.ts';
import type { CurveStore } from '../shop/store/curve-store.ts';
import type { Notice } from './notice.ts';

/** A curve on the shelf. */
export interface ShelvedCurve {
  readonly id: string;
  readonly curve: Curve;
}

/** What the shelf takes from outside. */
export interface CurveShelfParts {
  readonly store: CurveStore;
  /** Gives ids that no curve has. */
  readonly newId: () => string;
  /** The present time [ms since 1970-01-01]. */
  readonly now: () => number;
}

export class CurveShelf {
  readonly curves: ReadonlySignal<readonly ShelvedCurve[]>;
  readonly notice: ReadonlySignal<Notice | undefined>;

  readonly #parts: CurveShelfParts;
  readonly #curves: Signal<readonly ShelvedCurve[]> = signal([]);
  readonly #notice: Signal<Notice | undefined> = signal(undefined);

  /** @param parts - the store and what else is needed */
  constructor(parts: CurveShelfParts) {
    this.#parts = parts;
    this.curves = computed(() => this.#curves.value);
    this.notice = computed(() => this.#notice.value);
  }

  /** Reads what is kept. Where the browser refuses, the notice says so and the shelf stays empty. */
  async load(): Promise<void> {
    await this.#tried(async () => {
      const records = await this.#parts.store.readAll();
      const opened = records
        .toSorted((a, b) => b.written - a.written)
        .map(({ id, document }) => ({ id, result: openCurveDocument(document) }));
      this.#curves.value = opened.flatMap(({ id, result }) =>
        result.kind === 'opened' ? [{ id, curve: result.curve }] : [],
      );
      const lost = opened.length - this.#curves.value.length;
      if (lost > 0) {
        const text = `${lost} kept ${lost === 1 ? 'curve' : 'curves'} can’t be opened by this version and ${lost === 1 ? 'is' : 'are'} left as ${lost === 1 ? 'it is' : 'they are'}.`;
        this.#notice.value = { text };
      }
    });
  }

  /** Reads what is kept, again whenever that is changed elsewhere. @returns ends the listening */
  follow(): () => void {
    const stop = this.#parts.store.listen(() => void this.load());
    void this.load();
    return stop;
  }

  /** Keeps a curve. One of the same name stays where it is, beside it. */
  async keep(curve: Curve): Promise<void> {
    await this.#put(this.#parts.newId(), curve);
    this.#notice.value ??= { text: `“${curve.name}” is kept.` };
  }

  /** Changes a kept curve: its name, its note, its source. */
  async change(id: string, curve: Curve): Promise<void> {
    await this.#put(id, curve);
  }

  /** Takes a curve off the shelf. The notice can put it back. */
  async remove(id: string): Promise<void> {
    const kept = this.#curves.peek();
    const at = kept.findIndex((each) => each.id === id);
    const entry = kept[at];
    if (!entry) return;
    this.#curves.value = kept.toSpliced(at, 1);
    await this.#tried(() => this.#parts.store.remove(id));
    const undo = () => {
      this.dismiss();
      void this.#put(id, entry.curve);
    };
    this.#notice.value = { text: `“${entry.curve.name}” was deleted.`, undo };
  }

  /** Keeps every curve of the files; what is refused is told with its place. */
  async addFiles(files: readonly TextFile[]): Promise<void> {
    this.dismiss();
    const opened = files.map((file) => ({ file, ...openCurves(file) }));
    const curves = opened.flatMap((each) => each.curves);
    for (const curve of curves) await this.#put(this.#parts.newId(), curve);
    const problems = opened.flatMap(({ file, problems: found }) =>
      found.map((each) => ({ ...each, place: `“${file.name}”, ${each.place}` })),
    );
    const count = curves.length === 1 ? '1 curve was' : `${curves.length} curves were`;
    this.#notice.value ??= {
      text: `${count} taken in.${problems.length > 0 ? ' Left out:' : ''}`,
      problems,
    };
  }

  /** Takes the notice away. */
  dismiss(): void {
    this.#notice.value = undefined;
  }

  async #put(id: string, curve: Curve): Promise<void> {
    this.dismiss();
    const kept = this.#curves.peek();
    const at = kept.findIndex((each) => each.id === id);
    this.#curves.value = at === -1 ? [{ id, curve }, ...kept] : kept.with(at, { id, curve });
    await this.#tried(() =>
      this.#parts.store.write({ id, document: curve, written: this.#parts.now() }),
    );
  }

  async #tried(action: () => Promise<void>): Promise<void> {
    try {
      await action();
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      const text = `This browser does not keep curves: ${reason}. Save them as files.`;
      this.#notice.value = { text };
    }
  }
}
