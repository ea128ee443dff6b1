// A shop as a file of its own, for keeping elsewhere, sending, and the command line.

import { freshId } from './edits/fresh-id.ts';

/** A file to be saved: its name and its text. */
export interface TextFile {
  readonly name: string;
  readonly text: string;
}

/**
 * The file that holds a document.
 *
 * @param name - name of the shop; the file is named after it
 * @param document - the shop, or whatever is kept in its place
 * @returns name and JSON text of the file
 */
export function shopFile(name: string, document: unknown): TextFile {
  return { name: `${freshId(name, [])}.json`, text: `${JSON.stringify(document, undefined, 2)}\n` };
}
