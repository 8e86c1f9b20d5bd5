import { expect, test } from 'vitest';
import { draftOf, samples } from '../testing/drafts.ts';
import { anyRequest, type RawRequest } from '../testing/requests.ts';
import { composeRibbons, ribbonTotals } from './index.ts';

const totalled = (raw: RawRequest) => {
  const drafted = draftOf(raw);
  const { skirt, request } = drafted;
  const { rows } = composeRibbons(skirt, request.ribbons, request.mark);
  return { ...drafted, rows, totals: ribbonTotals(rows) };
};

test(
  'every strip is bought once, with those of its colour and width',
  samples(
    anyRequest,
    totalled,
    500,
  )(({ rows, totals }) => {
    const sum = (lengths: readonly number[]): number => lengths.reduce((all, each) => all + each, 0);
    const strips = rows.flatMap((row) => row.strips);
    expect(totals.flatMap((total) => total.strips).length).toBe(strips.length);
    expect(sum(totals.map(({ total }) => total.value))).toBeCloseTo(
      sum(strips.map(({ length }) => length.value)),
      6,
    );
    const keys = totals.map(({ colour, width }) => `${colour.name} ${colour.hex} ${width.value.toFixed(3)}`);
    expect(new Set(keys).size).toBe(keys.length);
  }),
);

test('two colours in turn over six rows are two ribbons of six strips', () => {
  const { totals } = totalled({});
  expect(totals.map(({ colour, strips }) => [colour.name, strips.length])).toEqual([
    ['teal', 6],
    ['gold', 6],
  ]);
});

test('one colour in two widths is two ribbons', () => {
  const { totals } = totalled({
    ribbons: { rows: [{ width: '1 in' }, {}, { width: '25.4 mm' }], colours: ['red'] },
  });
  expect(totals.map(({ strips }) => strips.length)).toEqual([4, 2]);
});
