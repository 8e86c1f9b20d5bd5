import type { MeasureSystem, RequestDocument } from '@ribbonwright/engine';

/** A fresh skirt's document around a body, in the language and measure of the table. */
export function documentFor(
  body: RequestDocument,
  name: string,
  { language, measure }: { readonly language: string; readonly measure: MeasureSystem },
): RequestDocument {
  const wearer = name.trim().slice(0, 120);
  return { version: 1, ...(wearer === '' ? {} : { wearer }), language, measure, body };
}
