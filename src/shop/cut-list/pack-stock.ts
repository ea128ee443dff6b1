// Which pieces are cut from which length of stock: the longest first, each from the first length that
// still holds it. The width of a saw cut is not counted.
//
// 1. D. S. Johnson et al., Worst-case performance bounds for simple one-dimensional packing
//    algorithms, SIAM J. Comput. 3 (1974) 299–325: first fit decreasing, never more than 11/9 of the
//    fewest and 4.

/** A straight piece that is wanted. */
export interface Piece {
  /** Id of the section that it belongs to. */
  readonly section: string;
  /** [m] */
  readonly length: number;
}

/** How a length of stock is cut. */
export interface StockUse {
  /** What is cut from it, the longest first. */
  readonly cuts: readonly Piece[];
  /** What is left of it [m] */
  readonly left: number;
  /** How many are cut just so [-] */
  readonly times: number;
}

/** Shorter than any saw cut: what is less is no piece, and fits anywhere [m] */
const NOTHING = 1e-6;

/**
 * Cuts pieces from stock of one length. A piece longer than the stock takes whole lengths, and a rest.
 *
 * @param pieces - straight pieces, 0 or more [m]
 * @param stock - length of the stock, above 0 [m]
 * @returns the lengths of stock in the order in which they are begun
 * @throws RangeError if the stock has no length
 */
export function packStock(pieces: readonly Piece[], stock: number): StockUse[] {
  if (!(stock > 0)) throw new RangeError(`the stock must be longer than 0, not ${stock}`);
  const whole: StockUse[] = [];
  const rests: Piece[] = [];
  for (const { section, length } of pieces) {
    const times = Math.floor((length + NOTHING) / stock);
    if (times > 0) whole.push({ cuts: [{ section, length: stock }], left: 0, times });
    const rest = length - times * stock;
    if (rest > NOTHING) rests.push({ section, length: rest });
  }
  return [...whole, ...firstFit(rests, stock)];
}

/**
 * How many lengths of stock are used.
 *
 * @param uses - how they are cut
 * @returns how many have to be bought [-]
 */
export function stockCount(uses: readonly StockUse[]): number {
  return uses.reduce((sum, { times }) => sum + times, 0);
}

function firstFit(pieces: readonly Piece[], stock: number): StockUse[] {
  const begun: { readonly cuts: Piece[]; left: number }[] = [];
  for (const piece of pieces.toSorted((a, b) => b.length - a.length)) {
    const length = begun.find(({ left }) => piece.length <= left + NOTHING);
    if (length === undefined) begun.push({ cuts: [piece], left: stock - piece.length });
    else {
      length.cuts.push(piece);
      length.left = Math.max(0, length.left - piece.length);
    }
  }
  return begun.map(({ cuts, left }) => ({ cuts, left, times: 1 }));
}
