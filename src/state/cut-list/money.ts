// Sums of money as they are written: two decimals, the currency's code behind them.

import type { UnitSystem } from '../../units/quantity.ts';

/**
 * A sum of money.
 *
 * @param amount - the sum [of the currency]
 * @param system - groups of thousands are marked as in these units
 * @returns such as '1,234.50'
 */
export function moneyNumber(amount: number, system: UnitSystem): string {
  const mark = system === 'us' ? ',' : '\u202f';
  const [whole = '', cents = ''] = amount.toFixed(2).split('.');
  return `${whole.replace(/\B(?=(\d{3})+$)/g, mark)}.${cents}`;
}

/**
 * A sum of money with its currency.
 *
 * @param amount - the sum [of the currency]
 * @param currency - its ISO 4217 code, if one was chosen
 * @param system - groups of thousands are marked as in these units
 * @returns such as '1,234.50 EUR'
 */
export function moneyText(
  amount: number,
  currency: string | undefined,
  system: UnitSystem,
): string {
  const number = moneyNumber(amount, system);
  return currency === undefined ? number : `${number}\u202f${currency}`;
}
