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
  readonly description?: string;
}

function* nodesIn(node: Node, path: readonly string[] = []): Generator<readonly [readonly string[], Node]> {
  yield [path, node];
  for (const [key, each] of Object.entries(node.properties ?? {})) yield* nodesIn(each, [...path, key]);
  for (const each of [...(node.anyOf ?? []), ...(node.oneOf ?? [])]) yield* nodesIn(each, path);
}
const nodes = [...nodesIn(schema as Node)];

describe('the published schema', () => {
  test('is JSON Schema 2020-12 and plain JSON', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
    expect(schema.title).toContain('version 1');
  });

  test('asks for the body and its three measurements, and for nothing else', () => {
    expect(schema.required).toEqual(['body']);
    expect(published.safeParse({ body }).success).toBe(true);
    for (const missing of Object.keys(body))
      expect(published.safeParse({ body: { ...body, [missing]: undefined } }).success).toBe(false);
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
        // The defaults of the gathered cut stand beside those of the flared.
        const kinds = path[0] === 'cut' && path.length > 1 ? [undefined, 'gathered'] : [undefined];
        const same = kinds.some((kind) => {
          const cut = kind === undefined ? {} : { cut: { kind } };
          const plain = kind === undefined ? usual : parseRequest({ measure, body, ...cut });
          const written = path.reduceRight<unknown>(
            (value, key) => ({ [key]: value }),
            node.default,
          ) as Record<string, object>;
          const merged = {
            measure,
            body,
            ...written,
            ...(path[0] === 'cut' ? { cut: { ...written['cut'], ...cut.cut } } : {}),
            ...(path[0] === 'body' ? { body: { ...body, ...written['body'] } } : {}),
          };
          return plain.ok && JSON.stringify(parseRequest(merged)) === JSON.stringify(plain);
        });
        expect(same, path.join('.')).toBe(true);
      }
    },
  );

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
