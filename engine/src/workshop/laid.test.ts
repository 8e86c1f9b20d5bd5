import { expect, test } from 'vitest';
import { classOfOne, parseRequest, type SkirtRequest } from '../request/index.ts';
import { exampleRequest } from '../request/index.ts';
import { planSkirt } from '../plan/index.ts';
import { planLaid, withLays, type ClothLay } from './laid.ts';
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

test('without lays, or where they are no better, it is laid by hand', () => {
  const request = requestOf();
  expect(planLaid(request, [])).toEqual(planSkirt(request));
  const byHand = planClass(classOfOne(request)).cloths.map(({ key, chosen }) => ({
    cloth: key,
    found: chosen,
  }));
  expect(planLaid(request, byHand)).toEqual(planSkirt(request));
});

test('the way that the maker asks for is kept to', () => {
  const cloth = { ...(exampleRequest('en')['cloth'] as object), lay: 'double fold' };
  const plan = planLaid(requestOf({ cloth }), laysOf(requestOf()));
  expect(plan.cloth.chosen.kind).toBe('double fold');
});
