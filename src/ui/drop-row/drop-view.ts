// A drop as its row shows it: everything already in the reader's units and words.

import type { SpeedRange } from '../../plot/speed-scale.ts';
import type { Shown } from '../quantity.ts';
import type { Verdict } from '../verdict/verdict-words.ts';

/** A speed with the numbers to draw it and to write it. */
export interface ShownSpeed {
  /** [m/s] */
  readonly velocity: number;
  readonly shown: Shown;
}

export interface DropView {
  readonly id: string;
  readonly name: string;
  /** 0 shut to 1 drawn right out [-]; undefined where there is no gate. */
  readonly travel: number | undefined;
  readonly flow: Shown;
  readonly need: Shown | undefined;
  /** In the drop's own pipe; undefined while it is shut. */
  readonly speed: ShownSpeed | undefined;
  /** In the slowest section that its air passes, and what that is called. */
  readonly slowest: (ShownSpeed & { readonly name: string }) | undefined;
  readonly range: SpeedRange;
  readonly verdict: Verdict;
}
