import { addressIn, readCode, readFile, unpack, type Arrived } from '../../carry/index.ts';
import type { RequestError } from '@ribbonwright/engine';

/** What became of one file: the skirt in it, why it is none, or that a picture has no code. */
export type Brought =
  | Extract<Arrived, { ok: true }>
  | {
      readonly ok: false;
      readonly name: string;
      readonly errors: readonly RequestError[];
      readonly noCode: boolean;
    };

/** An address is short: what is longer holds no skirt's address, or holds it at its start. */
const startOf = (file: File): Promise<string> => file.slice(0, 8000).text();

/** Reads a file as what it is: a picture by the code on it, text by the address in it, anything else as a skirt's file. */
export async function brought(file: File): Promise<Brought> {
  const refused = (errors: readonly RequestError[], noCode = false): Brought => ({
    ok: false,
    name: file.name,
    errors,
    noCode,
  });
  const isPicture = file.type.startsWith('image/');
  const packed = addressIn((isPicture ? await readCode(file) : await startOf(file)) ?? '');
  if (packed === null && isPicture) return refused([], true);
  if (packed === null) {
    const arrived = await readFile(file);
    return arrived.ok ? arrived : refused(arrived.errors);
  }
  const arrived = await unpack(packed);
  return arrived.ok ? arrived : refused(arrived.errors);
}
