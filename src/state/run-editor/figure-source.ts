// Where a figure of a form comes from, in one line; and a figure that the maker may put another in
// the place of.

import type { Provenance } from '../../duct/provenance.ts';

/** A figure that is computed or tabulated, unless the maker entered another. */
export interface Overridable {
  /** The maker's own, in SI; undefined where the usual one holds. */
  readonly own: number | undefined;
  /** What holds otherwise, in SI; undefined where nothing does. */
  readonly usual: number | undefined;
  /** Where the usual one comes from. */
  readonly source: string;
}

/**
 * A source in one line.
 *
 * @param source - citation and status
 * @returns 'EN 1506, 2007 · verified', or the status alone where nothing is cited
 */
export function sourceWords({ citation, status }: Provenance): string {
  return citation === '' ? status : `${citation} · ${status}`;
}
