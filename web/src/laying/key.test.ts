import {
  changed,
  exampleClass,
  exampleRequest,
  parseClass,
  parseRequest,
  type Change,
} from '@ribbonwright/engine';
import { describe, expect, test } from 'vitest';
import { classLaysKey, laysKey } from './key.ts';

const keyWith = (path: Change['path'], value: unknown): string => {
  const parsed = parseRequest(changed(exampleRequest('en'), [{ path, value }]));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return laysKey(parsed.request);
};
const plain = keyWith(['name'], 'a skirt');

describe('a kept lay of a skirt', () => {
  test.each([
    [['cloth', 'colour'], 'teal'],
    [['cloth', 'name'], 'linen'],
    [['cloth', 'price'], '3'],
    [['cloth', 'lay'], 'open'],
    [['ribbons', 'width'], '1/2 in'],
    [['wearer'], 'Sam'],
  ])('holds when %j changes', (path, value) => {
    expect(keyWith(path, value)).toBe(plain);
  });

  test.each([
    [['body', 'hip'], '44 in'],
    [['body', 'waistToHem'], '20 in'],
    [['cut'], { kind: 'gathered' }],
    [['cloth', 'width'], '60 in'],
    [['cloth', 'between'], '1/4 in'],
    [['cloth', 'lengths'], [{ length: '40 in' }]],
    [['cloth', 'pattern'], { across: '2 in' }],
    [['cloth', 'oneWay'], true],
  ])('holds no longer when %j changes', (path, value) => {
    expect(keyWith(path, value)).not.toBe(plain);
  });
});

test('that of a class says whose each skirt is', () => {
  const keyOf = (document: unknown): string => {
    const parsed = parseClass(document);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
    return classLaysKey(parsed.request);
  };
  const document = exampleClass('en');
  const before = keyOf(document);
  expect(keyOf(changed(document, [{ path: ['name'], value: 'Sunday class' }]))).toBe(before);
  expect(keyOf(changed(document, [{ path: ['cloths', 'navy', 'lay'], value: 'open' }]))).toBe(before);
  expect(keyOf(changed(document, [{ path: ['skirts', 0, 'wearer'], value: 'Wren' }]))).not.toBe(before);
  expect(keyOf(changed(document, [{ path: ['skirts', 0, 'cloth'], value: 'berry' }]))).not.toBe(before);
});
