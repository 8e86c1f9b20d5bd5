import { expect, test } from 'vitest';
import { planOf, type RawRequest } from '../testing/requests.ts';

const lost = (raw: RawRequest) =>
  planOf(raw)
    .notices.map(({ notice }) => notice)
    .filter(({ code }) => code === 'cloth.rowHardlySeen')
    .map(({ params }) => [params['row'], params['rows'], params['ribbon'], params['colour']]);

const tiered = { cut: { kind: 'tiered', tiers: 3 }, cloth: { colour: 'navy' } };
const onRed = [{ pieces: ['tier 3'], cloth: { colour: 'red' } }];

test('a ribbon is compared with the cloth that its row lies on', () => {
  const ribbons = { rows: [{ colour: 'red' }] };
  expect(lost({ ...tiered, ribbons })).toEqual([]);
  expect(lost({ ...tiered, ribbons, contrast: onRed })).toEqual([[1, 1, 'colour red', 'colour red']]);
});

test('a ribbon of the skirt’s own colour shows on a tier of another cloth', () => {
  const ribbons = { rows: [{ colour: 'navy' }] };
  expect(lost({ ...tiered, ribbons })).toEqual([[1, 1, 'colour navy', 'colour navy']]);
  expect(lost({ ...tiered, ribbons, contrast: onRed })).toEqual([]);
});

test('a row over the seam of two tiers is compared with both', () => {
  const contrast = [{ pieces: ['tier 2'], cloth: { colour: 'red' } }];
  const plan = planOf({ ...tiered, contrast, ribbons: { rows: 14, colours: ['red'], where: 'round' } });
  const row = plan.ribbons.rows.find(({ onSeam }) => onSeam !== null);
  expect(row?.round).toBe(1);
  const told = plan.notices.find(({ notice }) => notice.code === 'cloth.rowHardlySeen')?.notice;
  const onSecond = plan.ribbons.rows.filter(({ round }) => round === 2);
  expect(told?.params['rows']).toBe(onSecond.length + 1);
});

test('rows of one colour on one cloth are told once', () => {
  expect(lost({ cloth: { colour: 'navy' }, ribbons: { rows: 4, colours: ['navy', 'gold'] } })).toEqual([
    [1, 2, 'colour navy', 'colour navy'],
  ]);
});
