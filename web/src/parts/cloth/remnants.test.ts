import { expect, test } from 'vitest';
import type { ShelfRecord } from '../../store/index.ts';
import { askedOf, asLength, isAmong, onShelf, writtenLengths } from './remnants.ts';

const kept = (changes: Partial<ShelfRecord>): ShelfRecord => ({
  id: 'a',
  what: 'cloth',
  name: '',
  colour: 'navy',
  width: '',
  length: '36 in',
  made: 1,
  touched: 1,
  ...changes,
});

test('cloth on the shelf comes the oldest first; ribbon and cloth of unknown length do not', () => {
  const found = onShelf([
    kept({ id: 'new', made: 9 }),
    kept({ id: 'ribbon', what: 'ribbon' }),
    kept({ id: 'unknown', length: '' }),
    kept({ id: 'old', made: 2 }),
  ]);
  expect(found.map(({ id }) => id)).toEqual(['old', 'new']);
});

test('a cloth of the shelf becomes a length, and is known again among them', () => {
  const record = kept({ name: 'winter', width: '44 in' });
  expect(asLength(record)).toEqual({ name: 'winter', length: '36 in', width: '44 in' });
  expect(asLength(kept({}))).toEqual({ length: '36 in' });
  expect(asLength(kept({ washed: true }))).toEqual({ length: '36 in', washed: true });
  expect(isAmong(record, [asLength(record)])).toBe(true);
  expect(isAmong(record, [asLength(kept({}))])).toBe(false);
});

test('lengths are read where a document has them', () => {
  expect(writtenLengths({ cloth: { lengths: [{ length: '1 m' }] } })).toHaveLength(1);
  expect(writtenLengths({})).toEqual([]);
});

test('what is asked of a length is asked of it alone, in its width, as it was washed', () => {
  const document = { name: 'mine', cloth: { have: '1 m', width: '60 in', colour: 'teal' } };
  expect(askedOf(document, kept({ width: '44 in', washed: true }))).toEqual({
    name: 'mine',
    cloth: { have: '36 in', width: '44 in', colour: 'teal', washed: true },
  });
  expect(askedOf(document, kept({}))).toEqual({
    name: 'mine',
    cloth: { have: '36 in', width: '60 in', colour: 'teal' },
  });
});
