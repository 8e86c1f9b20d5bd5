import { LARGEST_REQUEST } from '@ribbonwright/engine';
import { arrivedIn, refused, unreadable, type Arrived } from './arrived.ts';

export type { Arrived } from './arrived.ts';

/** Bytes that a request of the largest size may have: three for each of its characters, and a byte order mark. */
const MOST_BYTES = 3 * LARGEST_REQUEST + 3;

/**
 * Reads a skirt's file, or another document's: UTF-8, or the UTF-16 that some editors save. Never rejects; whatever is
 * wrong with the file is told as an error.
 */
export async function readFile(
  file: Blob,
  documentIn: (text: string) => Arrived = arrivedIn,
): Promise<Arrived> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.slice(0, MOST_BYTES).arrayBuffer());
  } catch {
    // The file was moved, changed or taken away since it was chosen.
    return unreadable();
  }
  const encoding = encodingOf(bytes);
  const wasCut = file.size > bytes.length;
  const text = decoded(bytes, encoding, wasCut);
  if (text === null) return unreadable(firstFault(bytes, encoding));
  if (wasCut) return refused('tooLarge', { size: file.size, most: LARGEST_REQUEST });
  return documentIn(text);
}

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/** By the byte order mark; without one, by where the empty half of the first letter is: JSON begins in ASCII. */
function encodingOf([first, second]: Uint8Array): Encoding {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  if (first !== 0 && second === 0) return 'utf-16le';
  return first === 0 && second !== 0 ? 'utf-16be' : 'utf-8';
}

/** Null where the bytes are no text. */
function decoded(bytes: Uint8Array, encoding: Encoding, wasCut: boolean): string | null {
  try {
    // A file that was cut may end within a letter.
    return new TextDecoder(encoding, { fatal: true }).decode(bytes, { stream: wasCut });
  } catch {
    return null;
  }
}

/** Line and column of the first bytes that are no text. */
function firstFault(bytes: Uint8Array, encoding: Encoding): string {
  const text = new TextDecoder(encoding).decode(bytes);
  const before = text.slice(0, Math.max(0, text.indexOf('\uFFFD'))).split('\n');
  return `${before.length}:${(before.at(-1)?.length ?? 0) + 1}`;
}
