// Many shops in one file, for keeping elsewhere: one JSON document with the documents of all shops.

import { ARCHIVE_FORMAT } from './is-archive.ts';
import { openShopDocument } from './open-shop.ts';
import type { Problem } from './opening/problem.ts';
import { LONGEST_TEXT, readJson } from './opening/read-document.ts';
import type { Shop } from './schema/shop-schema.ts';
import type { TextFile } from './shop-file.ts';

const VERSION = 1;
/** What is around the shops is short. */
const MOST_SIGNS = LONGEST_TEXT - 1000;

/** What came of opening an archive. */
export interface OpenedArchive {
  readonly shops: readonly Shop[];
  /** What is wrong with the file, or with those of its shops that were left out. */
  readonly problems: readonly Problem[];
  /** How many shops the file holds. */
  readonly count: number;
}

/**
 * The files that hold all shops; more than one only where one would be too long to be opened.
 *
 * @param documents - shop documents, or whatever is kept in the place of one
 * @param day - for the names of the files, such as 2026-05-02
 * @returns the files
 */
export function archiveFiles(documents: readonly unknown[], day: string): TextFile[] {
  const parts: string[][] = [[]];
  let length = 0;
  for (const document of documents) {
    const text = JSON.stringify(document);
    if (length > 0 && length + text.length > MOST_SIGNS) {
      parts.push([]);
      length = 0;
    }
    parts.at(-1)?.push(text);
    length += text.length + 1;
  }
  return parts.map((part, i) => ({
    name: `shops-${day}${parts.length > 1 ? `-part-${i + 1}` : ''}.json`,
    text: `{"format":"${ARCHIVE_FORMAT}","version":${VERSION},"shops":[\n${part.join(',\n')}\n]}\n`,
  }));
}

/**
 * Opens an archive. A shop that can't be opened keeps none of the others from being opened.
 *
 * @param text - of the file
 * @returns its shops, and what is wrong and where
 */
export function openArchive(text: string): OpenedArchive {
  const json = readJson(text);
  if (json.kind === 'refused') return { shops: [], problems: json.problems, count: 0 };
  const { version, shops } = (json.value ?? {}) as { version?: unknown; shops?: unknown };
  if (typeof version !== 'number' || version > VERSION || !Array.isArray(shops)) {
    const message =
      typeof version === 'number' && version > VERSION
        ? `is ${version}: the file was made by a newer version of this program. Nothing in it was changed`
        : `must be ${VERSION}, and "shops" a list of shops`;
    return { shops: [], problems: [{ place: 'version', message }], count: 0 };
  }
  const opened = shops.map(openShopDocument);
  return {
    shops: opened.flatMap((each) => (each.kind === 'opened' ? [each.shop] : [])),
    problems: opened.flatMap((each, i) =>
      each.kind === 'opened'
        ? []
        : each.problems.map(({ place, message }) => ({ place: `shops[${i}]: ${place}`, message })),
    ),
    count: shops.length,
  };
}
