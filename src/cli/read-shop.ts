// A shop from a file on disk, or the problems, one a line.

import { readFileSync, statSync } from 'node:fs';
import { openShop } from '../shop/open-shop.ts';
import { LONGEST_TEXT } from '../shop/opening/read-document.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';

/** How reading a file ended. */
export type ReadShop =
  | { readonly kind: 'read'; readonly shop: Shop }
  | { readonly kind: 'refused'; readonly lines: readonly string[] };

/** A character of UTF-8 takes at most this many bytes. */
const MOST_BYTES = 4;

/**
 * Reads a shop file.
 *
 * @param path - path of the file
 * @returns the shop, or a line 'place: message' for each problem
 */
export function readShop(path: string): ReadShop {
  let text: string;
  try {
    const { size } = statSync(path);
    if (size > MOST_BYTES * LONGEST_TEXT) {
      return { kind: 'refused', lines: [`the file: is ${size} bytes long; no shop file is`] };
    }
    text = readFileSync(path, 'utf8');
  } catch (error) {
    return { kind: 'refused', lines: [`${path}: ${whyUnread(error)}`] };
  }
  const opened = openShop(text);
  if (opened.kind === 'opened') return { kind: 'read', shop: opened.shop };
  return {
    kind: 'refused',
    lines: opened.problems.map(({ place, message }) => `${place}: ${message}`),
  };
}

function whyUnread(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT') return 'there is no such file';
  if (code === 'EISDIR') return 'is a folder, not a file';
  if (code === 'EACCES') return 'may not be read';
  return `can't be read (${String(code ?? error)})`;
}
