import { describe, expect, test } from 'vitest';
import { parseRequest } from '../request/index.ts';
import { requestOf } from '../testing/requests.ts';
import { inches, mm } from '../units/index.ts';
import { bandsOf } from './options.ts';

const bands = (ribbons: Record<string, unknown>) => bandsOf(requestOf({ ribbons }).ribbons);
const errorsOf = (ribbons: Record<string, unknown>) => {
  const parsed = parseRequest({ body: { waist: '29 in', hip: '36 in', waistToHem: '31 in' }, ribbons });
  return parsed.ok ? [] : parsed.errors.map(({ path, code }) => `${path}: ${code}`);
};

describe('a composition in a document', () => {
  test('a number of rows is that many bands of one, colours in turn', () => {
    const made = bands({ rows: 5, colours: ['red', 'white', 'black'], width: '1 in' });
    expect(made.map((band) => band.length)).toEqual([1, 1, 1, 1, 1]);
    expect(made.flat().map(({ colour }) => colour.name)).toEqual(['red', 'white', 'black', 'red', 'white']);
    expect(made.flat().every(({ width }) => width === inches(1))).toBe(true);
  });

  test('bands say what differs; the rest is as for all', () => {
    const made = bands({
      rows: [{ colour: 'plum' }, { touching: [{}, { width: '1 cm' }, { colour: 'navy' }] }, {}],
      colours: ['red', 'white'],
      width: '2 cm',
    });
    expect(made.map((band) => band.map(({ colour, width }) => [colour.name, width]))).toEqual([
      [['plum', mm(20)]],
      [
        ['red', mm(20)],
        ['white', mm(10)],
        ['navy', mm(20)],
      ],
      [['red', mm(20)]],
    ]);
  });

  test('gaps by hand are one fewer than the bands, and are asked for only then', () => {
    expect(errorsOf({ rows: 3, spacing: 'by hand', gaps: ['1 in', '1 in'] })).toEqual([]);
    expect(errorsOf({ rows: 3, spacing: 'by hand', gaps: ['1 in'] })).toEqual(['ribbons.gaps: gaps']);
    expect(errorsOf({ rows: 3, spacing: 'by hand' })).toEqual(['ribbons.gaps: gaps']);
    expect(errorsOf({ rows: [{}, { touching: [{}, {}] }], spacing: 'by hand', gaps: ['1 in'] })).toEqual([]);
    expect(errorsOf({ rows: 0, spacing: 'by hand' })).toEqual([]);
    expect(errorsOf({ rows: 3, gaps: ['1 in'] })).toEqual([]);
  });

  test.each([
    [{ rows: -1 }],
    [{ rows: 2.5 }],
    [{ rows: 61 }],
    [{ rows: [{ touching: [{}] }] }],
    [{ rows: [{ colour: 'sea' }] }],
    [{ colours: [] }],
    [{ width: '0 in' }],
    [{ width: '1 yd' }],
    [{ spacing: 'random' }],
    [{ where: 'sides' }],
    [{ growth: 0.5 }],
    [{ overhang: '-1/2 in' }],
    [{ meaning: 'none' }],
  ])('%j is refused', (ribbons) => {
    expect(errorsOf(ribbons).length).toBeGreaterThan(0);
  });
});
