import { expect, test } from 'vitest';
import { addressOf, readRoute } from './route.svelte.ts';

test.each([
  ['', { at: 'home' }],
  ['#/', { at: 'home' }],
  ['#/start', { at: 'start' }],
  ['#/people', { at: 'place', place: 'people' }],
  ['#/skirt/a%2Fb/cut', { at: 'part', id: 'a/b', part: 'cut' }],
  ['#/skirt/x/elsewhere', { at: 'home' }],
  ['#/skirt/%E0%A4%A/cut', { at: 'part', id: '%E0%A4%A', part: 'cut' }],
  ['#/beside/a/b', { at: 'beside', ids: ['a', 'b'] }],
  ['#/arriving/1abc', { at: 'arriving', packed: '1abc' }],
])('%s', (hash, route) => {
  expect(readRoute(hash)).toEqual(route);
});

test('an address leads where it was made for', () => {
  expect(readRoute(addressOf.part('a/b#c', 'sew'))).toEqual({ at: 'part', id: 'a/b#c', part: 'sew' });
  expect(readRoute(addressOf.beside('a b', 'c/d'))).toEqual({ at: 'beside', ids: ['a b', 'c/d'] });
});
