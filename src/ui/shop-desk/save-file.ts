// Hands a text to the browser as a file to be saved.

import type { TextFile } from '../../shop/shop-file.ts';

/**
 * Saves a file the way the browser saves downloads.
 *
 * @param file - its name and its text
 * @param type - its media type
 */
export function saveFile({ name, text }: TextFile, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers begin to read only after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
