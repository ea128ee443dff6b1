// Many rows of figures take several turns, so that no frame of a drag pays for all of them.

/**
 * Each row from one of several readings, in turn.
 *
 * @param rows - as they were read in one turn
 * @param others - as they were read in the others
 * @returns as many as `rows`; neighbours are of different readings, the first of `rows`, as far as the
 *   readings hold a row of the same thing in the same place
 */
export function inTurns<Row extends { readonly id: string }>(
  rows: readonly Row[],
  ...others: readonly (readonly Row[] | undefined)[]
): readonly Row[] {
  return rows.map((row, i) => {
    const other = others[(i % (others.length + 1)) - 1]?.[i];
    return other?.id === row.id ? other : row;
  });
}
