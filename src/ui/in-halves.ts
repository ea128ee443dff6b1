// Many rows of figures take two turns, so that no frame of a drag pays for all of them.

/**
 * Every second row from a later reading.
 *
 * @param rows - as they were read in one turn
 * @param later - as they were read in another
 * @returns as many as `rows`; those that stand for the same thing alternate, beginning with one of `rows`
 */
export function inHalves<Row extends { readonly id: string }>(
  rows: readonly Row[],
  later: readonly Row[] | undefined,
): readonly Row[] {
  return rows.map((row, i) => {
    const other = i % 2 === 1 ? later?.[i] : undefined;
    return other?.id === row.id ? other : row;
  });
}
