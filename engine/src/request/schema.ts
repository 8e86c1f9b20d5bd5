import { z } from 'zod';
import { fieldsFor } from '../fields/index.ts';
import type { MeasureSystem } from '../units/index.ts';
import { CLASS_VERSION, classSchema } from './classRequest.ts';
import { valueAt } from './errors.ts';
import { partly } from './partly.ts';
import { REQUEST_VERSION, requestSchema } from './request.ts';

type JsonSchema = z.core.JSONSchema.JSONSchema;

/**
 * JSON Schema (draft 2020-12) of a request. Its defaults are those of the system of measure; a document in the
 * other system has that system's usual figures.
 */
export function requestJsonSchema(system: MeasureSystem = 'inches'): JsonSchema {
  const whole = requestSchema(fieldsFor(undefined, system));
  // A waist that goes with its cut need not name its kind.
  const published = whole.extend({ waist: partly(whole.shape.waist) });
  return {
    ...z.toJSONSchema(published, { io: 'input' }),
    title: `Ribbonwright skirt request, version ${String(REQUEST_VERSION)}`,
  };
}

/** JSON Schema (draft 2020-12) of a class. What is shared and what is a skirt's own are each described by themselves. */
export function classJsonSchema(system: MeasureSystem = 'inches'): JsonSchema {
  return {
    ...z.toJSONSchema(classSchema(fieldsFor(undefined, system)), { io: 'input' }),
    title: `Ribbonwright class request, version ${String(CLASS_VERSION)}`,
  };
}

/** The keys that may stand at a path of the document; for a choice of shapes, those of all that are of the kind written there. */
export function keysOfSchema(schema: z.ZodType, path: readonly PropertyKey[], raw: unknown): string[] {
  let at: JsonSchema[] = [jsonOf(schema)];
  for (const key of path) at = at.flatMap(shapes).flatMap((each) => stepInto(each, key));
  const kind = valueAt(raw, [...path, 'kind']);
  return [
    ...new Set(
      at
        .flatMap(shapes)
        .filter((each) => isOfKind(each, kind))
        .flatMap(keysOf),
    ),
  ];
}

const isSchema = (value: unknown): value is JsonSchema => typeof value === 'object' && value !== null;

const written = new WeakMap<z.ZodType, JsonSchema>();
/** Schemas are long-lived and few, errors many: each is written out once. */
function jsonOf(schema: z.ZodType): JsonSchema {
  const json = written.get(schema) ?? z.toJSONSchema(schema, { io: 'input' });
  written.set(schema, json);
  return json;
}

function isOfKind({ properties, required }: JsonSchema, kind: unknown): boolean {
  const own = properties?.['kind'];
  if (!isSchema(own) || own.const === undefined) return true;
  return kind === undefined ? !(required ?? []).includes('kind') : own.const === kind;
}

const keysOf = ({ properties, propertyNames }: JsonSchema): string[] => [
  ...Object.keys(properties ?? {}),
  ...(isSchema(propertyNames) ? (propertyNames.enum ?? []).map(String) : []),
];

const shapes = (schema: JsonSchema): JsonSchema[] => [
  schema,
  ...[...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...(schema.allOf ?? [])]
    .filter(isSchema)
    .flatMap(shapes),
];

function stepInto(schema: JsonSchema, key: PropertyKey): JsonSchema[] {
  const next = typeof key === 'number' ? schema.items : schema.properties?.[String(key)];
  return isSchema(next) && !Array.isArray(next) ? [next] : [];
}
