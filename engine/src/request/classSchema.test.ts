import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { anyClass } from '../testing/anyClass.ts';
import { mutated } from '../testing/mutations.ts';
import { patience, runs } from '../testing/runs.ts';
import type { RequestError } from './errors.ts';
import { classJsonSchema, parseClass } from './index.ts';

const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };
/** The published schema read back by itself: all that it says, and nothing of what our fields do. */
const published = z.fromJSONSchema(structuredClone(classJsonSchema()));
const accepts = (raw: unknown): boolean => published.safeParse(raw).success;

/** A schema is of JSON: nothing else is asked of it. */
const mutatedClass = mutated(anyClass).map((raw): unknown => JSON.parse(JSON.stringify(raw)));

/** What is about keys, types and counts; how a length, a price or a colour is written is the parser's alone. */
const ofStructure: ReadonlySet<RequestError['code']> = new Set([
  'notAnObject',
  'missing',
  'wrongType',
  'unknownKey',
  'notOneOf',
  'outOfRange',
  'tooLong',
]);

/**
 * What only shows once a skirt and what is shared are put together: which cut or waist is meant, what is written nowhere, a
 * name that no cloth has. A schema reads each part by itself.
 */
const isOfBoth = ({ path, code }: RequestError): boolean =>
  code === 'missing'
    ? !/^skirts(\[\d+\]\.body.*)?$/.test(path)
    : /\.(cut|waist)\b/.test(path) || (code === 'notOneOf' && path.endsWith('.cloth'));

describe('the published schema of a class', () => {
  test('lets a skirt write single fields of what is shared', () => {
    const shared = { cut: { kind: 'gored', gores: 8 }, teachings: { text: 'as I was shown' } };
    const own = { body, cut: { gores: 4 }, teachings: { print: true } };
    for (const skirt of [{ body, cut: { gores: 4 } }, own]) {
      expect(parseClass({ skirt: shared, skirts: [skirt] }).ok).toBe(true);
      expect(accepts({ skirt: shared, skirts: [skirt] })).toBe(true);
    }
  });

  test.each<[string, object]>([
    ['a body for all', { skirt: { body }, skirts: [{ body }] }],
    ['no length', { skirts: [{ body: { waist: '29 in', hip: '36 in' } }] }],
    ['a key there is none of', { skirts: [{ body, ribbons: { widht: '1 in' } }] }],
    [
      'more other cloths than a skirt may have',
      { skirts: [{ body, contrast: Array.from({ length: 9 }, () => ({ pieces: ['front'] })) }] },
    ],
    // Read by nobody, for every skirt has a cut of another kind: a slip all the same.
    [
      'what every skirt writes over',
      { skirt: { cut: { kind: 'gored', gorse: 8 } }, skirts: [{ body, cut: { kind: 'flared' } }] },
    ],
    [
      'a wrong kind of value that every skirt writes over',
      { skirt: { ribbons: { rows: 'many' } }, skirts: [{ body, ribbons: { rows: 3 } }] },
    ],
  ])('refuses %s, as the parser does', (_, raw) => {
    expect(accepts(raw)).toBe(false);
    expect(parseClass(raw).ok).toBe(false);
  });

  test('accepts whatever the parser accepts', patience, () => {
    let accepted = 0;
    fc.assert(
      fc.property(fc.oneof(anyClass, mutatedClass), (raw) => {
        if (!parseClass(raw).ok) return;
        accepted += 1;
        const found = published.safeParse(raw);
        expect(found.success ? [] : found.error.issues).toEqual([]);
      }),
      { numRuns: runs(500) },
    );
    expect(accepted).toBeGreaterThan(200);
  });

  test('refuses whatever the parser refuses for its structure', patience, () => {
    let refused = 0;
    fc.assert(
      fc.property(mutatedClass, (raw) => {
        const parsed = parseClass(raw);
        if (parsed.ok || !parsed.errors.some((each) => ofStructure.has(each.code) && !isOfBoth(each))) return;
        refused += 1;
        expect(accepts(raw), JSON.stringify(parsed.errors)).toBe(false);
      }),
      { numRuns: runs(500) },
    );
    expect(refused).toBeGreaterThan(100);
  });
});
