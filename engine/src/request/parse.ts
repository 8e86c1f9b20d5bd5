import type { z } from 'zod';
import { fieldsFor, type Fields } from '../fields/index.ts';
import { usualWaistFor } from '../skirt/index.ts';
import type { LengthUnit, MeasureSystem } from '../units/index.ts';
import { asRead, errorsOf, type RequestError } from './errors.ts';
import { jsonFaultAt } from './jsonFault.ts';
import { head, REQUEST_VERSION, requestSchema, type Language, type SkirtRequest } from './request.ts';
import { keysOfSchema } from './schema.ts';

export type ParsedRequest =
  | { readonly ok: true; readonly request: SkirtRequest }
  | { readonly ok: false; readonly errors: readonly RequestError[]; readonly language: Language };

/** A request is a page of text; a million characters is something else. */
export const LARGEST_REQUEST = 1_000_000;

const refuse = (
  error: Partial<RequestError> & Pick<RequestError, 'code'>,
  language: Language = 'en',
): ParsedRequest => ({
  ok: false,
  language,
  errors: [{ path: '', read: '', params: {}, ...error }],
});

/** Reads a request from JSON text. Hands back its errors, never throws. */
export function parseRequestText(text: string): ParsedRequest {
  if (text.length > LARGEST_REQUEST)
    return refuse({ code: 'tooLarge', params: { size: text.length, most: LARGEST_REQUEST } });
  const json = text.replace(/^\uFEFF/, '');
  let raw: unknown;
  try {
    raw = JSON.parse(json);
  } catch {
    return refuse({
      code: 'notJson',
      read: asRead(json.trim().slice(0, 40)),
      params: { where: whereIn(json) },
    });
  }
  return parseRequest(raw);
}

/** Line and column of a JSON fault. */
function whereIn(json: string): string {
  const before = json.slice(0, jsonFaultAt(json) ?? json.length).split('\n');
  return `${String(before.length)}:${String((before.at(-1)?.length ?? 0) + 1)}`;
}

/** Reads a request from parsed JSON: every default filled in, every length in millimetres. Never throws. */
export function parseRequest(raw: unknown): ParsedRequest {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return refuse({ code: 'notAnObject', read: asRead(raw) });
  const language = lenient(head.language, raw, 'language') ?? 'en';
  const version: unknown = (raw as Record<string, unknown>)['version'];
  if (typeof version === 'number' && version > REQUEST_VERSION)
    return refuse(
      { path: 'version', code: 'newerVersion', read: asRead(version), params: { known: REQUEST_VERSION } },
      language,
    );
  const units = lenient(head.units, raw, 'units');
  const system = lenient(head.measure, raw, 'measure') ?? usualSystem(units, language);
  const whole = withUsualWaist(raw);
  const parsed = schemaFor(units, system).safeParse(whole);
  if (!parsed.success)
    return {
      ok: false,
      language,
      errors: errorsOf(parsed.error.issues, raw, (path) =>
        keysOfSchema(schemaFor(units, system), path, whole),
      ),
    };
  return { ok: true, request: { ...parsed.data, measure: system } };
}

/** A document that names no waist has the one that goes with its cut. */
function withUsualWaist(raw: object): object {
  const { cut, waist = {} } = raw as { cut?: unknown; waist?: unknown };
  const kind = usualWaistFor(cut);
  if (kind === null || typeof waist !== 'object' || waist === null || 'kind' in waist) return raw;
  return { ...raw, waist: { ...waist, kind } };
}

/** A field that others are read by: its value where it is good; where it is not, the schema says so afterwards. */
function lenient<T>(schema: z.ZodType<T>, raw: object, key: string): T | undefined {
  const parsed = schema.safeParse((raw as Record<string, unknown>)[key]);
  return parsed.success ? parsed.data : undefined;
}

function usualSystem(units: LengthUnit | undefined, language: Language): MeasureSystem {
  if (units) return ['in', 'ft', 'yd'].includes(units) ? 'inches' : 'metric';
  return language === 'fr' ? 'metric' : 'inches';
}

type Schema = ReturnType<typeof requestSchema>;
const made = new Map<string, Schema>();
/** Schemas are built once for each pair of units and system. */
function schemaFor(units: LengthUnit | undefined, system: MeasureSystem): Schema {
  const key = `${units ?? ''} ${system}`;
  let schema = made.get(key);
  if (!schema) {
    const fields: Fields = fieldsFor(units, system);
    schema = requestSchema(fields);
    made.set(key, schema);
  }
  return schema;
}
