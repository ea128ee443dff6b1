// Names that no other record bears, also where the page comes over plain HTTP from a box in the shop and
// the browser makes none by itself.

/** 128 bits by chance, as 32 hexadecimal signs. */
export function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
