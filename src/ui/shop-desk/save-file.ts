// Hands a text to the browser as a file to be saved.

import type { TextFile } from '../../shop/shop-file.ts';

/**
 * Saves a file the way the browser saves downloads.
 *
 * @param file - its name and its text
 */
export function saveFile({ name, text }: TextFile): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
