import { speakerFor, usualMark } from '@ribbonwright/engine';
import { expect, test } from 'vitest';
import { toldLength } from './counter.ts';

const told = async (typed: string, measure: 'inches' | 'metric') =>
  toldLength(typed, measure, await speakerFor({ language: 'en', measure, mark: usualMark(measure) }));

test.each([
  ['1.6 m', 'inches', 1600],
  ['1 3/4 yd', 'metric', 1600.2],
  ['2', 'metric', 2000],
  ['2', 'inches', 1828.8],
  ['1,6', 'metric', 1600],
] as const)('%s where one measures in %s', async (typed, measure, length) => {
  const read = await told(typed, measure);
  expect(read.ok && read.length).toBeCloseTo(length, 6);
});

test('it is shown as it was told, and a bare number with its unit', async () => {
  expect(await told('1 3/4 yards ', 'metric')).toMatchObject({ shown: '1 3/4 yards' });
  expect(await told('1½', 'inches')).toMatchObject({ shown: '1½ yd' });
  expect(await told('1,6', 'metric')).toMatchObject({ shown: '1,6 m' });
});

test('what stands in the document afterwards is the same length', async () => {
  expect(await told('1 3/4 yd', 'inches')).toMatchObject({ written: '63 in' });
  expect(await told('1.6 m', 'metric')).toMatchObject({ written: '160 cm' });
});

test('what is no length is told, with what would be one', async () => {
  const read = await told('some', 'metric');
  expect(!read.ok && read.fault).toMatch(/72\.5 cm/);
});
