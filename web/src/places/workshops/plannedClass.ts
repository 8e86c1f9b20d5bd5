import {
  parseClass,
  planClass,
  type ClassPlan,
  type RequestDocument,
  type RequestError,
} from '@ribbonwright/engine';

/** What a class's document comes to: its plan, or why it can't be read. */
export type PlannedClass =
  | { readonly ok: true; readonly plan: ClassPlan }
  | { readonly ok: false; readonly errors: readonly RequestError[] };

const known = new WeakMap<RequestDocument, PlannedClass>();

/** The plan of a class. Documents are never changed in place, so each is planned once however often it is shown. */
export function plannedClass(document: RequestDocument): PlannedClass {
  const found = known.get(document) ?? plan(document);
  known.set(document, found);
  return found;
}

function plan(document: RequestDocument): PlannedClass {
  const parsed = parseClass(document);
  return parsed.ok ? { ok: true, plan: planClass(parsed.request) } : { ok: false, errors: parsed.errors };
}
