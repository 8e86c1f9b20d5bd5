import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { anyMutation } from '../testing/mutations.ts';
import { runs } from '../testing/runs.ts';
import { exampleClass } from './exampleClass.ts';
import { classJsonSchema, isClassText, parseClass, parseClassText, parseRequest } from './index.ts';
import type { ClassRequest } from './classRequest.ts';

const body = { waist: '29 in', hip: '36 in', waistToHem: '31 in' };

function classOf(raw: unknown): ClassRequest {
  const parsed = parseClass(raw);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return parsed.request;
}

function errorsOf(raw: unknown): [path: string, code: string][] {
  const parsed = parseClass(raw);
  return parsed.ok ? [] : parsed.errors.map(({ path, code }) => [path, code]);
}

describe('a class document', () => {
  test.each(['en', 'fr'] as const)('the example in %s is a class, and its schema says so', (language) => {
    const request = classOf(exampleClass(language));
    expect(request.skirts.length).toBeGreaterThan(3);
    expect(new Set(request.skirts.map(({ cloth }) => cloth)).size).toBe(2);
    expect(request.cloths.some(({ options }) => options.lengths.length > 0)).toBe(true);
    const published = z.fromJSONSchema(structuredClone(classJsonSchema()));
    expect(published.safeParse(exampleClass(language)).success).toBe(true);
  });

  test('a skirt of a class is the skirt that it would be alone', () => {
    const { skirts } = classOf({
      units: 'in',
      skirt: { cut: { kind: 'gored', gores: 8 }, ribbons: { width: 1 } },
      cloths: { red: { colour: 'red', width: 60 } },
      skirts: [{ wearer: 'Robin', body: { waist: 29, hip: 36, waistToHem: 31 } }],
    });
    const alone = parseRequest({
      units: 'in',
      measure: 'inches',
      wearer: 'Robin',
      cut: { kind: 'gored', gores: 8 },
      ribbons: { width: 1 },
      cloth: { colour: 'red', width: 60 },
      body: { waist: 29, hip: 36, waistToHem: 31 },
    });
    expect(alone.ok && skirts[0]?.request).toEqual(alone.ok && alone.request);
  });

  test('a skirt changes single fields of what is shared; a cut of another kind stands alone', () => {
    const { skirts } = classOf({
      skirt: { cut: { kind: 'gored', gores: 8 }, ribbons: { width: '1 in', hold: 'pins' } },
      skirts: [
        { body, ribbons: { width: '2 in' } },
        { body, cut: { gores: 4 } },
        { body, cut: { kind: 'flared' } },
      ],
    });
    const [wide, few, flared] = skirts.map(({ request }) => request);
    expect(wide?.ribbons).toMatchObject({ width: 50.8, hold: 'pins' });
    expect(few?.cut).toMatchObject({ kind: 'gored', gores: 4 });
    expect(flared?.cut.kind).toBe('flared');
  });

  test('where no cloth is named the first is meant; where there is none, the usual one', () => {
    expect(classOf({ skirts: [{ body }], cloths: { a: {}, b: {} } }).skirts[0]?.cloth).toBe('a');
    const plain = classOf({ skirts: [{ body }] });
    expect(plain.cloths).toHaveLength(1);
    expect(plain.skirts[0]?.cloth).toBe(plain.cloths[0]?.name);
  });

  test('other cloths of a skirt may be the class’s', () => {
    const { skirts } = classOf({
      cloths: { red: { width: '60 in' }, blue: {} },
      skirts: [
        {
          body,
          cloth: 'blue',
          cut: { kind: 'tiered' },
          contrast: [{ pieces: ['tier 1'], cloth: 'red' }, { pieces: ['tier 2'] }],
        },
      ],
    });
    expect(skirts[0]?.contrast).toEqual(['red', null]);
    expect(skirts[0]?.request.contrast[0]?.cloth.width).toBeCloseTo(60 * 25.4);
  });

  test('pieces are told apart by their labels', () => {
    const { skirts } = classOf({
      skirts: [{ body, wearer: 'Kit' }, { body }, { body, wearer: ' Kit ' }, { body, wearer: 'Sam' }],
    });
    expect(skirts.map(({ label }) => label)).toEqual(['Kit (1)', '2', 'Kit (2)', 'Sam']);
  });
});

describe('what is wrong in a class is told with its place', () => {
  const ok = { body };
  test.each<[string, unknown, [string, string][]]>([
    ['no skirts', {}, [['skirts', 'missing']]],
    ['none at all', { skirts: [] }, [['skirts', 'outOfRange']]],
    ['too many', { skirts: Array.from({ length: 201 }, () => ok) }, [['skirts', 'outOfRange']]],
    ['no list', { skirts: 3 }, [['skirts', 'wrongType']]],
    ['a number for a skirt', { skirts: [ok, 3] }, [['skirts[1]', 'wrongType']]],
    ['a list', [], [['', 'notAnObject']]],
    ['no body', { skirts: [ok, {}] }, [['skirts[1].body', 'missing']]],
    [
      'a bad hip',
      { skirts: [ok, ok, { body: { ...body, hip: '-3 in' } }] },
      [['skirts[2].body.hip', 'length.negative']],
    ],
    ['an unknown key', { skirts: [{ ...ok, colour: 'red' }] }, [['skirts[0].colour', 'unknownKey']]],
    [
      'a key of the whole class in a skirt',
      { skirts: [{ ...ok, language: 'fr' }] },
      [['skirts[0].language', 'unknownKey']],
    ],
    ['a body for all', { skirt: { body }, skirts: [ok] }, [['skirt.body', 'unknownKey']]],
    [
      'what is shared is wrong once',
      { skirt: { ribbons: { widht: 3 } }, skirts: [ok, ok] },
      [['skirt.ribbons.widht', 'unknownKey']],
    ],
    [
      'a cloth that is not there',
      { cloths: { red: {} }, skirts: [{ ...ok, cloth: 'blue' }] },
      [['skirts[0].cloth', 'notOneOf']],
    ],
    [
      'a shared one that is not there',
      { cloths: { red: {} }, skirt: { cloth: 'blue' }, skirts: [ok, ok] },
      [['skirt.cloth', 'notOneOf']],
    ],
    ['a cloth where none are', { skirts: [{ ...ok, cloth: 'blue' }] }, [['cloths', 'missing']]],
    [
      'no name of a cloth',
      { cloths: { a: {} }, skirts: [{ ...ok, cloth: 3 }] },
      [['skirts[0].cloth', 'wrongType']],
    ],
    ['a bad cloth', { cloths: { red: { width: 3 } }, skirts: [ok] }, [['cloths.red.width', 'length.noUnit']]],
    ['a newer one', { version: 2, skirts: [ok] }, [['version', 'newerVersion']]],
    ['a bad mark', { mark: '3 in', skirts: [ok] }, [['mark', 'notOneOf']]],
    ['a language there is none of', { language: 'xx', skirts: [ok] }, [['language', 'notOneOf']]],
    [
      'cuts of two kinds',
      { skirt: { cut: { kind: 'gored', gores: 6 } }, skirts: [{ ...ok, cut: { fraction: '1/2' } }] },
      [['skirts[0].cut.fraction', 'unknownKey']],
    ],
  ])('%s', (_, raw, expected) => {
    expect(errorsOf(raw)).toEqual(expected);
  });

  test('text that is no JSON is refused, and is no class', () => {
    const parsed = parseClassText('{"skirts": [');
    expect(parsed.ok).toBe(false);
    expect(isClassText('{"skirts": [')).toBe(false);
    expect(isClassText('{"skirts": 3}')).toBe(true);
    expect(isClassText('{"body": {}}')).toBe(false);
  });
});

describe('whatever is read', () => {
  const anySkirt = fc.oneof(anyMutation, fc.constant({ body }), fc.jsonValue());
  const anyClass = fc.record(
    {
      skirts: fc.oneof(fc.array(anySkirt, { maxLength: 4 }), fc.jsonValue()),
      skirt: anySkirt,
      cloths: fc.oneof(fc.dictionary(fc.string(), anySkirt), fc.jsonValue()),
      language: fc.constantFrom('en', 'fr', 3),
      units: fc.constantFrom('in', 'cm', {}),
    },
    { requiredKeys: [] },
  );

  test('is a class or is refused with a place, and never throws', () => {
    fc.assert(
      fc.property(anyClass, (raw) => {
        const parsed = parseClass(raw);
        if (parsed.ok) expect(parsed.request.skirts.length).toBeGreaterThan(0);
        else expect(parsed.errors.length).toBeGreaterThan(0);
      }),
      { numRuns: runs(300) },
    );
  });
});
