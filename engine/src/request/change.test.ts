import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyRequest } from '../testing/requests.ts';
import { changed, standingAt, undoing, type Change, type RequestDocument } from './change.ts';

const document = {
  body: { waist: '28 in' },
  ribbons: { rows: [{ width: '5/8 in' }, {}], gaps: ['1 in', '2 in'] },
};

describe('what stands at a path', () => {
  test.each<[Change['path'], unknown]>([
    [['body', 'waist'], '28 in'],
    [['ribbons', 'rows', 0, 'width'], '5/8 in'],
    [['ribbons', 'gaps', 1], '2 in'],
    [['ribbons', 'gaps', 2], undefined],
    [['cut', 'hem'], undefined],
    [['body', 'waist', 'length'], undefined],
    [['toString'], undefined],
    [[], document],
  ])('%j', (path, value) => {
    expect(standingAt(document, path)).toEqual(value);
  });
});

describe('a changed document', () => {
  test('has the new value where there was one, its keys in their order', () => {
    const after = changed(document, [{ path: ['body', 'waist'], value: '29 in' }]);
    expect(after).toEqual({ ...document, body: { waist: '29 in' } });
    expect(Object.keys(after)).toEqual(['body', 'ribbons']);
  });

  test('has objects made on the way to a path that was not there', () => {
    expect(changed({}, [{ path: ['cut', 'hem'], value: '1 in' }])).toEqual({ cut: { hem: '1 in' } });
  });

  test('has lost the key whose value is undefined', () => {
    expect(changed(document, [{ path: ['body', 'waist'], value: undefined }])).toEqual({
      ...document,
      body: {},
    });
  });

  test('has one entry of an array changed, one taken out', () => {
    const gaps = (change: unknown): unknown =>
      standingAt(changed(document, [{ path: ['ribbons', 'gaps', 0], value: change }]), ['ribbons', 'gaps']);
    expect(gaps('3 in')).toEqual(['3 in', '2 in']);
    expect(gaps(undefined)).toEqual(['2 in']);
  });

  test('takes its changes in their order', () => {
    const changes = ['1 in', '2 in'].map((value) => ({ path: ['cut', 'hem'], value }));
    expect(changed({}, changes)).toEqual({ cut: { hem: '2 in' } });
  });

  test('shares what is untouched, and leaves the given one as it was', () => {
    const before = structuredClone(document);
    const after = changed(document, [{ path: ['body', 'waist'], value: '29 in' }]);
    expect(after['ribbons']).toBe(document.ribbons);
    expect(document).toEqual(before);
  });
});

/** Paths of which some stand in a request of the generator and some do not; whatever stands at their parents. */
const paths: readonly Change['path'][] = [
  ['body', 'waist'],
  ['body', 'height'],
  ['cut', 'hem'],
  ['cut', 'hemAtFold'],
  ['waist', 'elasticWidth'],
  ['ribbons', 'rows'],
  ['ribbons', 'gaps'],
  ['ribbons', 'lowest'],
  ['ribbons', 'spacing'],
  ['cloth'],
  ['name'],
];
const value = fc.oneof(fc.constant(undefined), fc.string(), fc.array(fc.string(), { maxLength: 3 }));
const anyChanges = fc.array(fc.record({ path: fc.constantFrom(...paths), value }), { maxLength: 6 });

describe('undoing', () => {
  const broughtBack = (raw: RequestDocument, changes: readonly Change[]): RequestDocument =>
    changed(changed(raw, changes), undoing(raw, changes));
  const whole = { cut: {}, waist: {}, ribbons: {}, cloth: {} };

  test('brings back a request, keys that were absent and arrays among them', () => {
    fc.assert(
      fc.property(anyRequest, anyChanges, (raw, changes) => {
        const document = { ...whole, ...raw };
        expect(broughtBack(document, changes)).toEqual(document);
      }),
    );
  });

  test('takes away what was made on the way to a key', () => {
    expect(broughtBack({}, [{ path: ['cut', 'hem'], value: '1 in' }])).toEqual({});
  });

  test.each([
    ['the last entry taken away', 2, undefined],
    ['an entry in the middle taken away', 1, undefined],
    ['an entry that came after the last', 3, '4 in'],
  ])('brings back a list after %s', (_, at, value) => {
    const raw = { ribbons: { gaps: ['1 in', '2 in', '3 in'] } };
    const changes = [{ path: ['ribbons', 'gaps', at], value }];
    expect(changed(raw, changes)).not.toEqual(raw);
    expect(broughtBack(raw, changes)).toEqual(raw);
  });

  test('brings back single entries of an array', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string(), { minLength: 1, maxLength: 5 }),
        fc.array(fc.tuple(fc.nat(4), fc.string()), { maxLength: 4 }),
        (gaps, moves) => {
          const changes = moves.map(([at, text]) => ({
            path: ['ribbons', 'gaps', at % gaps.length],
            value: text,
          }));
          const raw = { ribbons: { gaps } };
          expect(changed(changed(raw, changes), undoing(raw, changes))).toEqual(raw);
        },
      ),
    );
  });
});
