import { errorsOf } from './errors.ts';
import { readHead, readJson, skirtSchemaFor, withUsualWaist, type Refused } from './read.ts';
import { REQUEST_VERSION, type SkirtRequest } from './request.ts';
import { keysOfSchema } from './schema.ts';

export type ParsedRequest = { readonly ok: true; readonly request: SkirtRequest } | Refused;

/** Reads a request from JSON text. Hands back its errors, never throws. */
export function parseRequestText(text: string): ParsedRequest {
  const json = readJson(text);
  return json.ok ? parseRequest(json.raw) : json;
}

/** Reads a request from parsed JSON: every default filled in, every length in millimetres. Never throws. */
export function parseRequest(given: unknown): ParsedRequest {
  const read = readHead(given, REQUEST_VERSION);
  if (!read.ok) return read;
  const { raw, head } = read;
  const whole = withUsualWaist(raw);
  const schema = skirtSchemaFor(head);
  const parsed = schema.safeParse(whole);
  if (!parsed.success)
    return {
      ok: false,
      language: head.language,
      measure: head.system,
      errors: errorsOf(parsed.error.issues, raw, (path) => keysOfSchema(schema, path, whole)),
    };
  return { ok: true, request: { ...parsed.data, measure: head.system } };
}
