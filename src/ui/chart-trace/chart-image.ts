// The picture of a chart, as all that trace it know it.

/** A picture to trace from. */
export interface ChartImage {
  /** Address of the picture within this page; give it back with `URL.revokeObjectURL`. */
  readonly url: string;
  /** [px] */
  readonly width: number;
  readonly height: number;
  /** Its number, where it is a page of a PDF. */
  readonly page?: number;
}
