import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromCloth, fromLengths } from '../plan/index.ts';
import { anyRequest, planOf } from '../testing/requests.ts';
import { metres } from '../units/index.ts';
import { speakerOf } from '../testing/speakers.ts';
import { planDocument } from './planDocument.ts';
import { PLAN_VERSION, planJsonSchema, planSchema } from './planSchema.ts';

const documentOf = (raw: Parameters<typeof planOf>[0]) => {
  const plan = planOf(raw);
  return planDocument(plan, speakerOf(plan.request), [
    fromCloth(plan.request, metres(2)),
    ...fromLengths(plan.request),
  ]);
};

describe('the plan as a document', () => {
  test('any plan keeps to its published schema, and survives JSON', () => {
    fc.assert(
      fc.property(anyRequest, (raw) => {
        const document = documentOf(raw);
        expect(planSchema.parse(JSON.parse(JSON.stringify(document)))).toEqual(document);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  // The public format: a field that goes or changes its meaning raises PLAN_VERSION.
  test('version 1 has these fields', () => {
    expect(PLAN_VERSION).toBe(1);
    expect(Object.keys(planJsonSchema().properties ?? {})).toEqual([
      'format',
      'version',
      'name',
      'wearer',
      'language',
      'measure',
      'marks',
      'skirt',
      'rounds',
      'parts',
      'waist',
      'extras',
      'rises',
      'overlap',
      'stride',
      'rows',
      'ribbons',
      'cloths',
      'lays',
      'elastic',
      'thread',
      'shopping',
      'steps',
      'time',
      'notices',
      'workings',
      'fromCloth',
      'fromLengths',
    ]);
  });

  test('each cloth of several is told with what is cut from it', () => {
    const { cloths } = documentOf({
      cut: { kind: 'tiered', tiers: 3 },
      contrast: [{ pieces: ['tier 2'], cloth: { name: 'poplin', colour: 'red', washed: true } }],
    });
    expect(cloths.map(({ name, colour, washed, pieces }) => [name, colour, washed, pieces])).toEqual([
      ['', 'navy', false, 'tier 1 and tier 3'],
      ['poplin', 'red', true, 'tier 2'],
    ]);
    expect(cloths[1]?.clothBeforeWash).toEqual(cloths[1]?.clothAfterWash);
  });

  // Common practice, no source.
  test('the smallest request gives the maker’s numbers', () => {
    const { marks, elastic, rows, ribbons, lays, stride } = documentOf({
      body: { waist: '30 in', hip: '28 in', waistToHem: '32 in' },
    });
    expect(marks.waistQuarter).toEqual({ mm: 285.75, shown: '11¼\u00a0in' });
    expect(marks.hemQuarter).toEqual({ mm: 381, shown: '15\u00a0in' });
    expect(marks.cutLength).toEqual({ mm: 889, shown: '35\u00a0in' });
    expect(elastic?.cut.shown).toBe('28½\u00a0in');
    expect(rows.map(({ width, lengths }) => [width.shown, lengths.length])).toEqual(
      Array(6).fill(['⅝\u00a0in', 2]),
    );
    expect(ribbons).toHaveLength(2);
    expect(lays.map(({ kind }) => kind)).toEqual([
      'double fold',
      'lengthwise fold',
      'crosswise fold',
      'open',
    ]);
    expect(lays.find(({ chosen }) => chosen)?.toBuy.mm).toBeLessThanOrEqual(2000);
    expect(stride.hemNeeded.mm).toBe(1524);
  });
});
