// Texts as few characters that may stand in a link: DEFLATE (RFC 1951) by the browser itself, then
// base64 in the alphabet for addresses (RFC 4648, section 5). Inflating stops at a megabyte, as it goes.

import { LinkFault } from './fault.ts';

/** Most that a link may inflate to [bytes]. */
export const MOST_BYTES = 1_000_000;

/**
 * Packs a text.
 *
 * @param text - any text
 * @returns letters, digits, - and _
 */
export async function deflated(text: string): Promise<string> {
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  const signs = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(signs).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/**
 * Unpacks a text.
 *
 * @param signs - by `deflated`
 * @returns the text
 * @throws LinkFault if the signs are none of a packed text, or it is longer than a megabyte
 */
export async function inflated(signs: string): Promise<string> {
  if (!/^[\w-]*$/.test(signs)) throw new LinkFault('it holds signs that no link has');
  const reader = unpacking(signs).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return text + decoder.decode();
      length += value.length;
      if (length > MOST_BYTES) throw new LinkFault('it holds more than a megabyte');
      text += decoder.decode(value, { stream: true });
    }
  } catch (error) {
    await reader.cancel().catch(() => {});
    if (error instanceof LinkFault) throw error;
    throw new LinkFault('it was cut off or changed on its way');
  }
}

function unpacking(signs: string): ReadableStream<Uint8Array> {
  try {
    const bytes = Uint8Array.from(
      atob(signs.replaceAll('-', '+').replaceAll('_', '/')),
      (sign) => sign.codePointAt(0) ?? 0,
    );
    return new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  } catch {
    throw new LinkFault('it was cut off or changed on its way');
  }
}
