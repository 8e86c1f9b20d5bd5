import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { anyMutation } from '../testing/mutations.ts';
import { anyRequest } from '../testing/requests.ts';
import { patience, runs } from '../testing/runs.ts';
import { parseRequest, requestJsonSchema } from './index.ts';

const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
const schema = requestJsonSchema();
/** The published schema read back by itself: all that it says, and nothing of what our fields do. */
const published = z.fromJSONSchema(structuredClone(schema));

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly items?: Node;
  readonly additionalProperties?: unknown;
  readonly type?: unknown;
  readonly default?: unknown;
  readonly const?: unknown;
  readonly description?: string;
}

function* nodesIn(node: Node, path: readonly string[] = []): Generator<readonly [readonly string[], Node]> {
  yield [path, node];
  for (const [key, each] of Object.entries(node.properties ?? {})) yield* nodesIn(each, [...path, key]);
  for (const each of [...(node.anyOf ?? []), ...(node.oneOf ?? [])]) yield* nodesIn(each, path);
}
const nodes = [...nodesIn(schema as Node)];
/** Kinds that may be chosen in a part of the document; none where there is no choice. */
const kindsOf = (room: string): unknown[] =>
  nodes.filter(([path]) => path.join('.') === `${room}.kind`).flatMap(([, node]) => node.const ?? []);

/** What is only there when it is asked for, with what it can't do without: its other defaults are seen beside that. */
function asked(path: readonly PropertyKey[]): object {
  const [room, part] = path;
  if (room === 'body' && part === 'growing')
    return { body: { growing: { reference: 'girls', ageMonths: 60, measuredOn: '2026-03-14' } } };
  const isWithin = (room === 'extras' || room === 'cloth') && path.length > 2;
  return isWithin ? { [room]: { [String(part)]: {} } } : {};
}

function deepMerge(under: object, over: object): object {
  const isObject = (value: unknown): value is object =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  const base = under as Readonly<Record<string, unknown>>;
  return {
    ...base,
    ...Object.fromEntries(
      Object.entries(over).map(([key, value]: [string, unknown]) => {
        const old = base[key];
        return [key, isObject(old) && isObject(value) ? deepMerge(old, value) : value];
      }),
    ),
  };
}

describe('the published schema', () => {
  test('is JSON Schema 2020-12 and plain JSON', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
    expect(schema.title).toContain('version 1');
  });

  test('asks for the body with its waist and its length, and for nothing else', () => {
    expect(schema.required).toEqual(['body']);
    expect(published.safeParse({ body }).success).toBe(true);
    for (const missing of Object.keys(body))
      expect(published.safeParse({ body: { ...body, [missing]: undefined } }).success).toBe(
        missing === 'hip',
      );
  });

  test('knows no other keys, at any level', () => {
    const open = nodes.filter(
      ([, { properties, additionalProperties }]) =>
        properties !== undefined && additionalProperties !== false,
    );
    expect(open).toEqual([]);
  });

  test('says of every length how it is written', () => {
    const lengths = nodes.filter(([, { type }]) => Array.isArray(type));
    expect(lengths.length).toBeGreaterThan(20);
    for (const [path, { description }] of lengths)
      expect(description, path.join('.')).toMatch(/^A (length|percentage)/);
  });

  test.each(['inches', 'metric'] as const)(
    'its defaults in %s are what a request without them gets',
    (measure) => {
      const told = [...nodesIn(requestJsonSchema(measure) as Node)].filter(
        ([path, node]) => node.default !== undefined && path[0] !== 'version' && path[0] !== 'teachings',
      );
      expect(told.length).toBeGreaterThan(40);
      const usual = parseRequest({ measure, body });
      for (const [path, node] of told) {
        // The defaults of every cut and every waist stand beside those of the others.
        const room = String(path[0]);
        const kinds = path.length > 1 ? [undefined, ...kindsOf(room)] : [undefined];
        const same = kinds.some((kind) => {
          const there = asked(path);
          const chosen = kind === undefined ? there : { [room]: { kind } };
          const plain =
            kind === undefined && path.length < 3
              ? usual
              : parseRequest(deepMerge({ measure, body }, chosen));
          const written = path.reduceRight<unknown>(
            (value, key) => ({ [key]: value }),
            node.default,
          ) as Record<string, object>;
          const merged = deepMerge(deepMerge({ measure, body }, chosen), written);
          return plain.ok && JSON.stringify(parseRequest(merged)) === JSON.stringify(plain);
        });
        expect(same, path.join('.')).toBe(true);
      }
    },
  );

  test('lets a waist go without its kind where the cut says which it is', () => {
    const raw = { body, cut: { kind: 'circle' }, waist: { seam: '1/2 in' } };
    expect(parseRequest(raw).ok).toBe(true);
    expect(published.safeParse(raw).success).toBe(true);
    expect(published.safeParse({ ...raw, waist: { kind: 'turned casing', seam: '1/2 in' } }).success).toBe(
      false,
    );
  });

  test('accepts whatever the parser accepts', patience, () => {
    let accepted = 0;
    fc.assert(
      fc.property(fc.oneof(anyRequest, anyMutation), (raw) => {
        const parsed = parseRequest(raw);
        if (!parsed.ok) return;
        accepted += 1;
        const found = published.safeParse(raw);
        expect(found.success ? [] : found.error.issues).toEqual([]);
      }),
      { numRuns: runs(600) },
    );
    expect(accepted).toBeGreaterThan(250);
  });
});
