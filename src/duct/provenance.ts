// Where a number of a reference table comes from, and how sure it is. Shown beside the number.

/** How sure a tabulated number is, in the words that are shown. */
export type Status = 'verified' | 'from memory, unverified' | 'common practice, no source';

/** The source of a number as it is shown. */
export interface Provenance {
  /** Author or body, title, edition and table, in one line; empty where there is no source. */
  readonly citation: string;
  readonly status: Status;
}

/** A list of sources as the reference tables hold it. */
export interface Source {
  readonly id: string;
  readonly citation: string;
  readonly edition: string;
  readonly table: string;
}

/**
 * The source of one row of a reference table.
 *
 * @param row - the row, or anything with a source and a status
 * @param sources - the table's list of sources
 * @returns citation and status
 * @throws RangeError if the row names a source that the table does not have
 */
export function provenanceOf(
  row: { readonly source: string; readonly status: string },
  sources: readonly Source[],
): Provenance {
  const source = sources.find(({ id }) => id === row.source);
  if (source === undefined) throw new RangeError(`no source "${row.source}" in the table`);
  // A source that is none says no more than the status does, and is not to be shown twice.
  if (source.citation.toLowerCase() === row.status) {
    return { citation: '', status: row.status as Status };
  }
  const details = [source.edition, source.table].filter((part) => part !== '—');
  return {
    citation: [source.citation, ...details].join(', '),
    status: row.status as Status,
  };
}
