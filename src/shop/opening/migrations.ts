// Brings an older document up to the version of today, one named step after another. A document of a
// newer version is never touched: it may hold what this version would lose.

import { CURVE_VERSION } from '../schema/curve-schema.ts';
import { SHOP_VERSION } from '../schema/shop-schema.ts';
import { showValue } from './place.ts';

/** A document as JSON holds it, before anything is known of its keys. */
export type RawDocument = Readonly<Record<string, unknown>>;

/** One step from a version to the next. */
export interface Migration {
  /** What changed in the format, in a few words. */
  readonly name: string;
  /** The version it reads; it gives the next one. */
  readonly from: number;
  /** The document in the next version; `version` itself is set by the caller. */
  readonly migrate: (document: RawDocument) => RawDocument;
}

/** The newest version of a format, and the steps that lead there. */
export interface VersionHistory {
  readonly format: string;
  readonly newest: number;
  readonly migrations: readonly Migration[];
}

/** How bringing a document up to date ended. */
export type Migrated =
  | { readonly kind: 'current'; readonly document: RawDocument; readonly steps: readonly string[] }
  | { readonly kind: 'refused'; readonly message: string };

/** The history of the shop format. No version but the first was made yet. */
export const SHOP_HISTORY: VersionHistory = {
  format: 'dropcurve-shop',
  newest: SHOP_VERSION,
  migrations: [],
};

/** The history of the curve format. No version but the first was made yet. */
export const CURVE_HISTORY: VersionHistory = {
  format: 'dropcurve-curve',
  newest: CURVE_VERSION,
  migrations: [],
};

/**
 * A document in the newest version of its format, or why it can't be.
 *
 * @param document - a document whose `format` is that of the history
 * @param history - the newest version and the steps that lead there
 * @returns the document and the names of the steps taken, or the reason for refusing it
 */
export function migrate(document: RawDocument, history: VersionHistory): Migrated {
  const version = document['version'];
  if (version === undefined) {
    return { kind: 'refused', message: `is missing; it must be ${history.newest}` };
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    const message = `is ${showValue(version)}; it must be a whole number from 1 to ${history.newest}`;
    return { kind: 'refused', message };
  }
  if (version > history.newest) {
    const message =
      `is ${version}: the file was made by a newer version of this program, and this one reads ` +
      `up to version ${history.newest}. Open it with the newer one; the file is as it was`;
    return { kind: 'refused', message };
  }
  return takeSteps(document, version, history);
}

function takeSteps(document: RawDocument, version: number, history: VersionHistory): Migrated {
  let current = document;
  const steps: string[] = [];
  for (let from = version; from < history.newest; from++) {
    const migration = history.migrations.find((candidate) => candidate.from === from);
    if (migration === undefined) {
      throw new RangeError(`no migration of ${history.format} from version ${from}`);
    }
    current = { ...migration.migrate(current), version: from + 1 };
    steps.push(migration.name);
  }
  return { kind: 'current', document: current, steps };
}
