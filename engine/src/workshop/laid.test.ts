import { describe, expect, test } from 'vitest';
import { classOfOne, parseRequest, type SkirtRequest } from '../request/index.ts';
import { exampleRequest } from '../request/index.ts';
import { planSkirt } from '../plan/index.ts';
import { asLaid, closerThan, keptLays, planLaid, withLays, type ClothLay } from './laid.ts';
import { planClass } from './plan.ts';
import { searchClass } from './search.ts';

function requestOf(changes: object = {}): SkirtRequest {
  const parsed = parseRequest({ ...exampleRequest('en'), ...changes });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  return parsed.request;
}

function laysOf(request: SkirtRequest): ClothLay[] {
  const found: ClothLay[] = [];
  searchClass(classOfOne(request), {
    seed: 1,
    evaluations: 4000,
    better: (_, lay, { key }) => found.push({ cloth: key, found: lay }),
  });
  return found;
}

test('a skirt laid as it was found takes what was found, and buys it', () => {
  const request = requestOf();
  const lays = laysOf(request);
  const { chosen } = withLays(planClass(classOfOne(request)), lays).cloths[0] ?? {};
  expect(lays.some(({ found }) => found === chosen)).toBe(true);
  const plan = planLaid(request, lays);
  expect(plan.cloth.chosen.clothBefore.value).toBe(chosen?.clothBefore.value);
  expect(plan.cloth.chosen.clothBefore.value).toBeLessThan(planSkirt(request).cloth.chosen.clothBefore.value);
  expect(plan.cloth.lays.map(({ kind }) => kind)).toEqual(
    planSkirt(request).cloth.lays.map(({ kind }) => kind),
  );
});

test('without lays it is laid by hand', () => {
  const request = requestOf();
  expect(planLaid(request, [])).toEqual(planSkirt(request));
});

describe('marks at the folds: by hand it is folded in four, though another way takes less', () => {
  const request = requestOf({ body: { waist: '30 in', hip: '42 in', waistToHem: '30 in' }, cut: {} });
  const byHand = planSkirt(request);
  const least = Math.min(...byHand.cloth.lays.filter(({ fits }) => fits).map(({ toBuy }) => toBuy.value));

  test('so it stands in the plan', () => {
    expect(byHand.cloth.chosen.kind).toBe('double fold');
    expect(byHand.cloth.chosen.toBuy.value).toBeGreaterThan(least);
  });

  test('once closer lays were sought, what takes least is taken, though it was laid by hand', () => {
    const shared = planClass(classOfOne(request));
    const lays = keptLays(shared, []);
    expect(lays.map(({ found }) => found)).toEqual(shared.cloths.map(({ chosen }) => chosen));
    const plan = planLaid(request, lays);
    expect(plan.cloth.chosen.toBuy.value).toBe(least);
    expect(plan.cloth.chosen.kind).toBe(shared.cloths[0]?.chosen.kind);
    expect(plan.supplies.items.find(({ what }) => what === 'cloth')?.buy.value).toBe(least);
    expect(closerThan(shared, asLaid(shared, byHand)).map(({ key }) => key)).toEqual(
      shared.cloths.map(({ key }) => key),
    );
    expect(closerThan(shared, shared)).toEqual([]);
  });
});

test('the way that the maker asks for is kept to', () => {
  const cloth = { ...(exampleRequest('en')['cloth'] as object), lay: 'double fold' };
  const plan = planLaid(requestOf({ cloth }), laysOf(requestOf()));
  expect(plan.cloth.chosen.kind).toBe('double fold');
});
