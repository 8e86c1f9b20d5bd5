import { describe, expect, test } from 'vitest';
import { planOf, type RawRequest } from '../testing/requests.ts';
import { unlike } from '../cloth/testing/unlike.ts';
import { waistItems } from './waistItems.ts';

const itemsOf = (raw: RawRequest) => planOf(raw).supplies.items;
const item = (raw: RawRequest, what: string) => itemsOf(raw).find((each) => each.what === what);
const names = (raw: RawRequest) => itemsOf(raw).map(({ what }) => what as string);
const band = { waist: { kind: 'plain waistband' } } as const;

describe('what the waist takes', () => {
  test('a turned casing takes elastic alone', () => {
    const besides = ['cord', 'zip', 'buttons', 'interfacing', 'knit', 'lining'];
    expect(names({})).toContain('elastic');
    expect(names({}).filter((name) => besides.includes(name))).toEqual([]);
  });

  test('a drawstring takes cord: its cut length, in the shop’s steps', () => {
    const raw = { waist: { kind: 'drawstring' } };
    const found = item(raw, 'cord');
    const { cord } = planOf(raw).skirt.waist;
    expect(found?.need).toEqual(cord?.cut);
    expect(found?.width).toEqual(cord?.width);
    expect(found?.buy.value).toBeGreaterThanOrEqual(cord?.cut.value ?? Infinity);
  });

  test('a band that opens takes a zip as long as the opening below it, a button, and interfacing', () => {
    const { closure, above } = planOf(band).skirt.waist;
    expect(item(band, 'zip')?.buy.value).toBeCloseTo((closure?.depth.value ?? 0) - above.value, 6);
    expect(item(band, 'buttons')?.buy.value).toBe(closure?.buttons);
    expect(item(band, 'interfacing')?.width?.value).toBe(900);
  });

  test('a placket takes no zip', () => {
    expect(names({ waist: { kind: 'plain waistband', opens: 'placket' } })).not.toContain('zip');
  });

  test('interfacing is left out where the maker leaves it out', () => {
    expect(names({ ...band, supplies: { interfacing: { use: false } } })).not.toContain('interfacing');
  });

  test('a stretch band takes stretch cloth, no elastic', () => {
    const raw = { waist: { kind: 'stretch band' } };
    expect(names(raw)).toContain('knit');
    expect(names(raw)).not.toContain('elastic');
  });

  test('a wrap that buttons takes two buttons more', () => {
    const { request } = planOf();
    const till = { options: request.supplies, system: request.measure };
    const skirt = unlike['a wrap'];
    const width = skirt.finishedLength;
    const wrap = (closes: 'ties' | 'buttons') =>
      waistItems({ ...skirt, overlap: { width, facing: width, closes } }, till).find(
        ({ what }) => what === 'buttons',
      );
    expect(wrap('buttons')?.buy.value).toBe(2);
    expect(wrap('ties')).toBeUndefined();
  });

  test('each is priced where its price is known, buttons by the piece', () => {
    const priced = {
      ...band,
      supplies: { notions: { zip: '3.40', buttons: '0.75' }, interfacing: { price: '6' } },
    };
    expect(item(priced, 'zip')?.price?.minor).toBe(340);
    expect(item(priced, 'buttons')?.price?.minor).toBe(75);
    expect(item(priced, 'interfacing')?.price?.minor).toBeGreaterThan(0);
    expect(item(band, 'zip')?.price).toBeNull();
  });
});

test('lining cloth is bought by the lay of its own, at its own price', () => {
  const plan = planOf({
    cut: { kind: 'gathered', widths: 2 },
    extras: { lining: {}, liningCloth: { width: '60 in', price: '8' } },
  });
  const found = plan.supplies.items.find(({ what }) => what === 'lining');
  expect(found?.need).toBe(plan.lining?.chosen.clothBefore);
  expect(found?.buy).toBe(plan.lining?.chosen.toBuy);
  expect(found?.price?.minor).toBeGreaterThan(0);
});
