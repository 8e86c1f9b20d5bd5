import { LARGEST_REQUEST, type RequestDocument } from '@ribbonwright/engine';
import { arrivedIn, refused, unreadable, type Arrived } from './arrived.ts';

/** First letter of what is packed: how the rest is to be read. `1`: JSON, zlib (RFC 1950, whose checksum tells a damaged text from another skirt), base64url (RFC 4648). */
const FORMAT = '1';

/** A document as a short text of letters, digits, - and _ that an address can hold. */
export async function pack(document: RequestDocument): Promise<string> {
  const packing = new Blob([JSON.stringify(document)]).stream().pipeThrough(new CompressionStream('deflate'));
  return FORMAT + base64url(new Uint8Array(await new Response(packing).arrayBuffer()));
}

/** Reads what `pack` wrote. Never rejects, and reads no more than a request can be, whatever was packed. */
export async function unpack(text: string): Promise<Arrived> {
  const format = text.charAt(0);
  if (/[2-9]/.test(format)) return refused('newerVersion', { known: FORMAT });
  const bytes = format === FORMAT ? fromBase64url(text.slice(1)) : null;
  if (bytes === null) return unreadable();
  try {
    const json = await inflated(bytes);
    return json === null
      ? refused('tooLarge', { size: `> ${LARGEST_REQUEST}`, most: LARGEST_REQUEST })
      : arrivedIn(json);
  } catch {
    return unreadable();
  }
}

/** Null as soon as there is more than a request can be. Rejects where the bytes are damaged. */
async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<string | null> {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  for (;;) {
    const { done, value } = await reader.read();
    text += decoder.decode(value, { stream: !done });
    if (text.length > LARGEST_REQUEST) {
      await reader.cancel().catch(() => undefined);
      return null;
    }
    if (done) return text;
  }
}

/** Bytes that become one string at a time: as many arguments as every browser takes. */
const AT_ONCE = 0x2000;

function base64url(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += AT_ONCE)
    binary += String.fromCharCode(...bytes.subarray(at, at + AT_ONCE));
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Null where the text is not base64url. */
function fromBase64url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]+$/.test(text)) return null;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) =>
      letter.charCodeAt(0),
    );
  } catch {
    return null;
  }
}
