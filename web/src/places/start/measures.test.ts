import { speakerFor, usualMark } from '@ribbonwright/engine';
import { describe, expect, test } from 'vitest';
import { bodyErrors, readBody, shownMeasure } from './measures.ts';

const english = await speakerFor({ language: 'en', measure: 'inches', mark: usualMark('inches') });
const french = await speakerFor({ language: 'fr', measure: 'metric', mark: usualMark('metric') });

describe('measurements as they are typed', () => {
  test('three numbers without a unit are a body, in the measure that is shown', () => {
    const read = readBody({ waist: '28 3/8', hip: '36', waistToHem: '33' }, 'inches', english);
    expect(read).toEqual({ body: { waist: '28 3/8 in', hip: '36 in', waistToHem: '33 in' }, faults: {} });
    expect(readBody({ waist: '71,5', hip: '92', waistToHem: '84' }, 'metric', french).faults).toEqual({});
  });

  test('a unit that is typed holds', () => {
    const { body } = readBody({ waist: '72 cm', hip: '36', waistToHem: '33' }, 'inches', english);
    expect(bodyErrors(body)).toEqual([]);
  });

  test('each fault is told at its own field, and the others are read all the same', () => {
    const { body, faults } = readBody({ waist: 'wide', hip: '36', age: 'four' }, 'inches', english);
    expect(Object.keys(faults).toSorted()).toEqual(['age', 'waist', 'waistToHem']);
    expect(body['hip']).toBe('36 in');
  });

  test('a number in the wrong unit is out of range', () => {
    expect(readBody({ waist: '280', hip: '36', waistToHem: '33' }, 'inches', english).faults.waist).toMatch(
      /unit/,
    );
  });

  test('what nobody typed is not in the body', () => {
    const { body } = readBody(
      { waist: '28', hip: '36', waistToHem: '33', height: ' ', age: '' },
      'inches',
      english,
    );
    expect(Object.keys(body)).toEqual(['waist', 'hip', 'waistToHem']);
  });
});

test('a kept measurement is shown in the measure of the table', () => {
  expect(shownMeasure({ waist: '72 cm' }, 'waist', french)).toBe('72\u00a0cm');
  expect(shownMeasure({ waist: 'about so' }, 'waist', english)).toBe('about so');
  expect(shownMeasure({}, 'waist', english)).toBe('');
  expect(shownMeasure({ age: 7 }, 'age', english)).toBe('7');
});
