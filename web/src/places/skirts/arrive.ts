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

/** Reads a file as what it is: a picture by the code on it, anything else as a skirt's file. */
export async function brought(file: File): Promise<Brought> {
  const refused = (errors: readonly RequestError[], noCode = false): Brought => ({
    ok: false,
    name: file.name,
    errors,
    noCode,
  });
  if (!file.type.startsWith('image/')) {
    const arrived = await readFile(file);
    return arrived.ok ? arrived : refused(arrived.errors);
  }
  const packed = addressIn((await readCode(file)) ?? '');
  if (packed === null) return refused([], true);
  const arrived = await unpack(packed);
  return arrived.ok ? arrived : refused(arrived.errors);
}
