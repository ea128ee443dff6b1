// A number with whatever follows it, as it stands in a cell of a pasted table, read with one decimal
// mark. Unlike a typed number it is not asked about by itself: the whole table decides on the mark.

/** What parts the whole from its decimals. */
export type DecimalMark = 'point' | 'comma';

/** A number and the text behind it, which should be its unit. */
export interface WrittenAmount {
  readonly value: number;
  /** As written; empty where nothing follows. */
  readonly unit: string;
}

const FRACTION = /^([-+]?) ?(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)(?!\d)/;
/** Groups of three are parted by one and the same mark, which is not the decimal one. */
const DECIMAL: Readonly<Record<DecimalMark, RegExp>> = {
  point:
    /^([-+]?) ?((?:[1-9]\d{0,2}(?:(?:,\d{3})+|(?: \d{3})+|(?:'\d{3})+)|\d+)?(?:\.\d+)?)(e[-+]?\d+)?(?![\d.,])/i,
  comma:
    /^([-+]?) ?((?:[1-9]\d{0,2}(?:(?:\.\d{3})+|(?: \d{3})+|(?:'\d{3})+)|\d+)?(?:,\d+)?)(e[-+]?\d+)?(?![\d.,])/i,
};

/**
 * Reads a cell that begins with a number.
 *
 * @param cell - text from `tidyText`
 * @param mark - what parts decimals off
 * @returns number and unit, or undefined where no number of this style begins there
 */
export function writtenAmount(cell: string, mark: DecimalMark): WrittenAmount | undefined {
  const fraction = FRACTION.exec(cell);
  if (fraction) {
    const [all, sign, whole = '0', top, bottom] = fraction;
    const value = Number(whole) + Number(top) / Number(bottom);
    return amount(sign === '-' ? -value : value, cell.slice(all.length));
  }
  const decimal = DECIMAL[mark].exec(cell);
  if (!decimal || decimal[2] === '') return undefined;
  const [all, sign, digits = '', exponent = ''] = decimal;
  const plain =
    mark === 'point'
      ? digits.replace(/[, ']/g, '')
      : digits.replace(/[. ']/g, '').replace(',', '.');
  const value = Number(plain + exponent);
  return amount(sign === '-' ? -value : value, cell.slice(all.length));
}

/** A footnote's mark is no unit, and a further number is none either. */
function amount(value: number, rest: string): WrittenAmount | undefined {
  const unit = rest.replace(/[*†‡]/g, '').trim();
  return Number.isFinite(value) && !/^[\d.,]/.test(unit) ? { value, unit } : undefined;
}
