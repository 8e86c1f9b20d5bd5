import type { z } from 'zod';
import { fieldsFor } from '../fields/index.ts';
import { usualWaistFor } from '../skirt/index.ts';
import type { LengthUnit, MeasureSystem } from '../units/index.ts';
import { asRead, type RequestError } from './errors.ts';
import { jsonFaultAt } from './jsonFault.ts';
import { head, requestSchema, type Language } from './request.ts';

/** A document that was refused, and the language and the measure in which to say so. */
export interface Refused {
  readonly ok: false;
  readonly errors: readonly RequestError[];
  readonly language: Language;
  readonly measure: MeasureSystem;
}

/** A request is a page of text; a million characters is something else. */
export const LARGEST_REQUEST = 1_000_000;

export const refuse = (
  error: Partial<RequestError> & Pick<RequestError, 'code'>,
  language: Language = 'en',
): Refused => ({
  ok: false,
  language,
  // What is refused before its measure is known tells of no length.
  measure: 'metric',
  errors: [{ path: '', read: '', params: {}, ...error }],
});

/** Reads JSON text, with or without the mark that some editors begin a file with. */
export function readJson(text: string): { readonly ok: true; readonly raw: unknown } | Refused {
  if (text.length > LARGEST_REQUEST)
    return refuse({ code: 'tooLarge', params: { size: text.length, most: LARGEST_REQUEST } });
  const json = text.replace(/^\uFEFF/, '');
  try {
    return { ok: true, raw: JSON.parse(json) };
  } catch {
    return refuse({
      code: 'notJson',
      read: asRead(json.trim().slice(0, 40)),
      params: { where: whereIn(json) },
    });
  }
}

/** Line and column of a JSON fault. */
function whereIn(json: string): string {
  const before = json.slice(0, jsonFaultAt(json) ?? json.length).split('\n');
  return `${String(before.length)}:${String((before.at(-1)?.length ?? 0) + 1)}`;
}

/** What a document says about how the rest of it is read. */
export interface ReadHead {
  readonly language: Language;
  readonly units: LengthUnit | undefined;
  readonly system: MeasureSystem;
}

/** The head of a document of a version that is known here; a newer one is refused by its number. */
export function readHead(
  raw: unknown,
  known: number,
): { readonly ok: true; readonly raw: object; readonly head: ReadHead } | Refused {
  if (!isGroup(raw)) return refuse({ code: 'notAnObject', read: asRead(raw) });
  const language = lenient(head.language, raw, 'language') ?? 'en';
  const { version } = raw;
  if (typeof version === 'number' && version > known)
    return refuse(
      { path: 'version', code: 'newerVersion', read: asRead(version), params: { known } },
      language,
    );
  const units = lenient(head.units, raw, 'units');
  const system = lenient(head.measure, raw, 'measure') ?? usualSystem(units, language);
  return { ok: true, raw, head: { language, units, system } };
}

/** A value of a document that has parts by name. */
export const isGroup = (
  raw: unknown,
): raw is Readonly<Record<string, unknown>> & { readonly version?: unknown } =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

/** A document that names no waist has the one that goes with its cut. */
export function withUsualWaist(raw: object): object {
  const { cut, waist = {} } = raw as { cut?: unknown; waist?: unknown };
  const kind = usualWaistFor(cut);
  if (kind === null || !isGroup(waist) || 'kind' in waist) return raw;
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

/** Schemas are built once for each pair of units and system. */
export function oncePerUnits<Schema>(
  build: (units: LengthUnit | undefined, system: MeasureSystem) => Schema,
): (head: Pick<ReadHead, 'units' | 'system'>) => Schema {
  const made = new Map<string, Schema>();
  return ({ units, system }) => {
    const key = `${units ?? ''} ${system}`;
    const schema = made.get(key) ?? build(units, system);
    made.set(key, schema);
    return schema;
  };
}

/** The schema of a skirt's request in a document's units. */
export const skirtSchemaFor = oncePerUnits((units, system) => requestSchema(fieldsFor(units, system)));
