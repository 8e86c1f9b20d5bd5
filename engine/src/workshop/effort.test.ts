import { expect, test } from 'vitest';
import { sharing } from './effort.ts';

test('evaluations are parted by weight', () => {
  const next = sharing({ seed: 5, evaluations: 1000 }, [6, 3, 1]);
  expect([next(), next(), next()].map(({ evaluations }) => evaluations)).toEqual([600, 300, 100]);
});

test('time that one search leaves goes to the next ones', () => {
  let now = 0;
  const next = sharing({ seed: 5, spent: () => now }, [1, 1, 2]);
  const first = next();
  now = 0.25;
  expect(first.spent?.()).toBeCloseTo(1);
  now = 0.1; // It came back early: nine tenths are left for a third and two thirds.
  const second = next();
  now = 0.4;
  expect(second.spent?.()).toBeCloseTo(1);
  const third = next();
  now = 0.7;
  expect(third.spent?.()).toBeCloseTo(0.5);
  now = 1;
  expect(third.spent?.()).toBeCloseTo(1);
});

test('when all time is over, nobody gets any', () => {
  const next = sharing({ seed: 5, spent: () => 1.2 }, [1, 1]);
  expect(next().spent?.()).toBe(1);
});
