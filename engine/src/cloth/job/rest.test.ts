import { describe, expect, test } from 'vitest';
import { point, polyline, type Path } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Table } from '../lays/table.ts';
import { restOf, stripTaken } from './rest.ts';

const fabric = { selvage: figure.length(mm(10), 'cloth.selvage') };
const box = (x: number, y: number, along: number, across: number): Path =>
  polyline([point(x, y), point(x + along, y), point(x + along, y + across), point(x, y + across)], {
    closed: true,
  });
type Edges = Pick<Table, 'layers' | 'top' | 'bottom' | 'left' | 'right'>;
const open: Edges = {
  layers: 1,
  top: 'selvage',
  bottom: 'selvage',
  left: 'raw end',
  right: 'raw end',
};
const lengthwise: Edges = { ...open, layers: 2, top: 'selvages', bottom: 'fold' };
const crosswise: Edges = {
  layers: 2,
  top: 'selvages',
  bottom: 'selvages',
  left: 'two ends',
  right: 'fold',
};
const inFour: Edges = { ...crosswise, layers: 4, left: 'two folds', right: 'fold and two ends' };
/** A table of 2000 × 500, less what is cut. */
const left = (edges: Edges, ...cut: readonly Path[]) => {
  const pieces = cut.map((outline) => ({ outline }));
  const rest = restOf({ ...edges, along: mm(2000), across: mm(500), pieces }, fabric);
  return rest && { ...rest.opened, count: rest.count };
};

describe('what is left is told as a tape measures it', () => {
  test('an uncut single layer has both of its selvages, a strip along one of them has that one', () => {
    expect(left(open)).toEqual({ along: 2000, across: 500, count: 1 });
    expect(left(open, box(0, 10, 2000, 290))).toEqual({ along: 2000, across: 200, count: 1 });
  });

  test('beyond a fold it goes on', () => {
    expect(left(lengthwise, box(0, 10, 2000, 290))).toEqual({ along: 2000, across: 400, count: 1 });
    expect(left(crosswise, box(0, 10, 1500, 480))).toMatchObject({ across: 500, along: 1000, count: 1 });
  });

  test('away from the fold there is one on each layer', () => {
    expect(left(lengthwise, box(0, 310, 2000, 190))).toEqual({ along: 2000, across: 310, count: 2 });
    expect(left(crosswise, box(500, 10, 1500, 480))).toEqual({ along: 500, across: 500, count: 2 });
  });

  test('of four layers: two at the edge with two folds, one at the edge with one, one all along', () => {
    expect(left(inFour, box(500, 10, 1500, 480))).toEqual({ along: 1000, across: 500, count: 2 });
    expect(left(inFour, box(0, 10, 500, 480))).toMatchObject({ across: 500, count: 1 });
    expect(left(inFour, box(0, 10, 2000, 290))).toEqual({ along: 8000, across: 200, count: 1 });
  });

  test('a strip that single pieces are cut from is not offered again', () => {
    const table = {
      ...lengthwise,
      along: mm(2000),
      across: mm(500),
      pieces: [{ outline: box(0, 300, 2000, 200) }],
    };
    expect(restOf(table, fabric)).not.toBeNull();
    expect(restOf(table, fabric, [stripTaken(table, mm(300))])).toBeNull();
  });
});
