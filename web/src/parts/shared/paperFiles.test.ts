import { expect, test } from 'vitest';
import { dayOf, paperFileName } from './paperFiles.ts';

test.each([
  ['Ribbon skirt', 'Card', 'Ribbon skirt - Card.pdf'],
  ['Robin’s: red/blue', 'Liste d’achats', 'Robin’s red blue - Liste d’achats.pdf'],
  ['..\u202e\n', 'Card', 'Card.pdf'],
  ['x'.repeat(500), 'Card', `${'x'.repeat(60)} - Card.pdf`],
])('%s, %s', (title, paper, name) => {
  expect(paperFileName(title, paper)).toBe(name);
});

test('the day is the one on the wall, not the one in Greenwich', () => {
  expect(dayOf(new Date(2026, 0, 9, 23, 59))).toBe('2026-01-09');
  expect(dayOf(new Date(2026, 10, 25, 0, 1))).toBe('2026-11-25');
});
