// The currencies that a price may be in: those that the browser knows by name.

import type { Choice } from '../choice-field/choice-field.ts';

/**
 * The choices of a currency.
 *
 * @param chosen - code of the one in use, which may be one that the browser doesn't know
 * @returns none first, then all by code
 */
export function currencyChoices(chosen: string | undefined): Choice[] {
  const known = Intl.supportedValuesOf('currency');
  const codes = chosen === undefined || known.includes(chosen) ? known : [chosen, ...known];
  const names = new Intl.DisplayNames('en', { type: 'currency' });
  return [
    { value: '', words: 'not said' },
    ...codes.map((code) => ({ value: code, words: `${code}, ${names.of(code) ?? code}` })),
  ];
}
