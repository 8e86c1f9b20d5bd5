import { parseRequestText, type RequestDocument, type RequestError } from '@ribbonwright/engine';

/** A skirt from elsewhere: its document as it was written, or why it can't be read. */
export type Arrived =
  | { readonly ok: true; readonly document: RequestDocument }
  | { readonly ok: false; readonly errors: readonly RequestError[] };

/** Reads a document's text as the command line does. What is kept is what was written, not what it was read as. */
export function arrivedIn(text: string): Arrived {
  const parsed = parseRequestText(text);
  return parsed.ok
    ? { ok: true, document: JSON.parse(text.replace(/^\uFEFF/, '')) as RequestDocument }
    : { ok: false, errors: parsed.errors };
}

/** Refuses the whole of what arrived. */
export const refused = (code: RequestError['code'], params: RequestError['params']): Arrived => ({
  ok: false,
  errors: [{ path: '', code, read: '', params }],
});

/** What can't be text, or was damaged on its way: told like JSON that ends at its first letter. */
export const unreadable = (where = '1:1'): Arrived => refused('notJson', { where });
