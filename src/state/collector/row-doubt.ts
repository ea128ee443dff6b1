// A doubt about one point of a curve: what looks wrong with it, and what may be done.

import type { CurvePoint } from '../../curve/curve-data.ts';

/** What somebody may do about a point. */
export type Remedy =
  | { readonly kind: 'aside'; readonly words: string }
  | { readonly kind: 'replace'; readonly words: string; readonly point: CurvePoint };

/** A doubt about one point. */
export interface RowDoubt {
  readonly words: string;
  readonly remedies: readonly Remedy[];
}
