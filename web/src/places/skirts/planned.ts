import {
  parseRequest,
  planSkirt,
  type RequestDocument,
  type RequestError,
  type SkirtPlan,
} from '@ribbonwright/engine';

/** What a kept document comes to: its plan, or why it can't be read. */
export type Planned =
  | { readonly ok: true; readonly plan: SkirtPlan }
  | { readonly ok: false; readonly errors: readonly RequestError[] };

const known = new WeakMap<RequestDocument, Planned>();

/** The plan of a document. Documents are never changed in place, so each is planned once however often it is shown. */
export function planned(document: RequestDocument): Planned {
  const found = known.get(document) ?? plan(document);
  known.set(document, found);
  return found;
}

function plan(document: RequestDocument): Planned {
  const parsed = parseRequest(document);
  return parsed.ok ? { ok: true, plan: planSkirt(parsed.request) } : { ok: false, errors: parsed.errors };
}
