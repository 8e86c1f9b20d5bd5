import { speakerFor, usualMark } from '@ribbonwright/engine';
import { expect, test } from 'vitest';
import { toldLength } from './counter.ts';

const told = (typed: string, measure: 'inches' | 'metric') =>
  toldLength(typed, measure, speakerFor({ language: 'en', measure, mark: usualMark(measure) }));

test.each([
  ['1.6 m', 'inches', 1600],
  ['1 3/4 yd', 'metric', 1600.2],
  ['2', 'metric', 2000],
  ['2', 'inches', 1828.8],
  ['1,6', 'metric', 1600],
] as const)('%s where one measures in %s', (typed, measure, length) => {
  const read = told(typed, measure);
  expect(read.ok && read.length).toBeCloseTo(length, 6);
});

test('it is shown as it was told, and a bare number with its unit', () => {
  expect(told('1 3/4 yards ', 'metric')).toMatchObject({ shown: '1 3/4 yards' });
  expect(told('1½', 'inches')).toMatchObject({ shown: '1½ yd' });
  expect(told('1,6', 'metric')).toMatchObject({ shown: '1,6 m' });
});

test('what stands in the document afterwards is the same length', () => {
  expect(told('1 3/4 yd', 'inches')).toMatchObject({ written: '63 in' });
  expect(told('1.6 m', 'metric')).toMatchObject({ written: '160 cm' });
});

test('what is no length is told, with what would be one', () => {
  const read = told('some', 'metric');
  expect(!read.ok && read.fault).toMatch(/72\.5 cm/);
});
