// Ids as few characters, and references as distances. Most ids follow from the name beside them or
// count on from the one before; a section mostly empties into one close by.

import { freshId } from '../edits/fresh-id.ts';
import { COLLECTOR_ID } from '../collector-id.ts';

/** Stands before the stem of an id that counts on from the last one with that stem. */
const ON = '~';

/** Shortens ids one after another, or restores them in the same order. */
export class IdSequence {
  readonly #taken: string[] = [];
  readonly #last = new Map<string, number>();

  /**
   * @param id - as it stands in the document
   * @param name - the name beside it, if any
   * @returns a short text; undefined where the id follows from the name
   */
  shorten(id: string, name: string | undefined): string | undefined {
    const { stem, number } = partsOf(id);
    const short =
      name !== undefined && freshId(name, this.#taken) === id
        ? undefined
        : number === (this.#last.get(stem) ?? Number.NaN) + 1
          ? `${ON}${stem}`
          : id;
    this.#take(id);
    return short;
  }

  /**
   * @param short - by `shorten`
   * @param name - the name beside it, if any
   * @returns the id
   */
  restore(short: string | undefined, name: string | undefined): string {
    let id = short ?? freshId(name ?? '', this.#taken);
    if (short?.startsWith(ON)) {
      const stem = short.slice(ON.length);
      id = `${stem}-${(this.#last.get(stem) ?? 0) + 1}`;
    }
    this.#take(id);
    return id;
  }

  #take(id: string): void {
    this.#taken.push(id);
    const { stem, number } = partsOf(id);
    if (number !== undefined) this.#last.set(stem, number);
  }
}

/**
 * Where something leads, as a distance in a list.
 *
 * @param into - id of a section, or the collector
 * @param place - from where the distance is counted
 * @param ids - of the sections in their order
 * @returns the distance, or the id itself where it is none of the list; undefined for the collector
 */
export function distanceTo(
  into: string,
  place: number,
  ids: readonly string[],
): number | string | undefined {
  if (into === COLLECTOR_ID) return undefined;
  const there = ids.indexOf(into);
  return there === -1 ? into : place - there;
}

/**
 * The id at a distance.
 *
 * @param distance - by `distanceTo`
 * @param place - from where it is counted
 * @param ids - of the sections in their order
 * @returns the id; undefined where nothing is at that distance
 */
export function idAt(distance: unknown, place: number, ids: readonly string[]): string | undefined {
  if (distance === undefined) return COLLECTOR_ID;
  if (typeof distance === 'number') return ids[place - distance];
  return typeof distance === 'string' ? distance : undefined;
}

function partsOf(id: string): { stem: string; number: number | undefined } {
  const [, stem = id, digits] = /^(.+)-([1-9]\d{0,5})$/.exec(id) ?? [];
  return { stem, number: digits === undefined ? undefined : Number(digits) };
}
