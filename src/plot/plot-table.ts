// A plot's figures as a table, for those who would rather read than look.

/** A column: what stands in it, and in what unit. */
export interface TableColumn {
  readonly name: string;
  /** Left out where the cells are words. */
  readonly unit?: string | undefined;
}

/** Ready to be written: every row has a cell for each column, and the first cell names the row. */
export interface PlotTable {
  /** What the table shows, in a few words. */
  readonly caption: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly string[])[];
}
