import { parseClassText, type RequestDocument } from '@ribbonwright/engine';
import { readFile, type Arrived } from '../../carry/index.ts';

/** Reads a class's text as the command line does. What is kept is what was written. */
function classIn(text: string): Arrived {
  const parsed = parseClassText(text);
  return parsed.ok
    ? { ok: true, document: JSON.parse(text.replace(/^\uFEFF/, '')) as RequestDocument }
    : { ok: false, errors: parsed.errors };
}

/** Reads a class's file. Never rejects; whatever is wrong with the file is told as an error. */
export const readClass = (file: Blob): Promise<Arrived> => readFile(file, classIn);
