import { exampleRequest, parseRequest, planSkirt, type RequestDocument } from '@ribbonwright/engine';
import { describe, expect, test } from 'vitest';
import { banded, listed, repeated, rowChanges, rowsOf, swapped, without } from './rows.ts';

const planOf = (ribbons: RequestDocument = {}) => {
  const parsed = parseRequest({ ...exampleRequest('en'), ribbons });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return planSkirt(parsed.request);
};
const teal = { colour: 'teal', width: '5/8 in' };
const gold = { colour: 'gold', width: '1 in' };

describe('rows of the list and bands of the document', () => {
  test('rows that touch are one band', () => {
    const bands = [teal, { touching: [gold, teal] }, gold];
    expect(listed(bands).map(({ touches }) => touches)).toEqual([false, false, true, false]);
    expect(banded(listed(bands))).toEqual(bands);
  });

  test('a number of equal rows is written out, each colour in turn', () => {
    expect(rowsOf(planOf({ rows: 3, colours: ['teal', 'gold'] })).map(({ colour }) => colour)).toEqual([
      'teal',
      'gold',
      'teal',
    ]);
  });

  test('the row above one that is taken off does not hang on nothing', () => {
    expect(without(listed([{ touching: [teal, gold] }]), 0)).toEqual([{ ...gold, touches: false }]);
  });

  test('ribbons that change places leave the touching where it was', () => {
    const rows = listed([{ touching: [teal, gold] }]);
    expect(swapped(rows, 0, 1).map(({ colour, touches }) => [colour, touches])).toEqual([
      ['gold', false],
      ['teal', true],
    ]);
    expect(swapped(rows, 1, 1)).toEqual(rows);
  });
});

describe('gaps kept by hand', () => {
  const plan = planOf({ rows: [teal, gold, teal], spacing: 'by hand', gaps: ['2 in', '3 in'] });

  test('a row that comes on takes the uppermost gap again', () => {
    const [, gaps] = rowChanges(plan, repeated(rowsOf(plan), 2));
    expect(gaps).toEqual({ path: ['ribbons', 'gaps'], value: ['2 in', '3 in', '3 in'] });
  });

  test('a row that goes takes its gap with it', () => {
    const [, gaps] = rowChanges(plan, without(rowsOf(plan), 2));
    expect(gaps?.value).toEqual(['2 in']);
  });

  test('even gaps are left to the plan', () => {
    expect(rowChanges(planOf(), rowsOf(planOf()))).toHaveLength(1);
  });
});
