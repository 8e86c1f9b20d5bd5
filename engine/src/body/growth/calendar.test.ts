import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenly } from '../../testing/evenly.ts';
import { isCalendarDate, monthsAfter } from './calendar.ts';

const DAY = 86_400_000;
const written = (time: number): string => new Date(time).toISOString().slice(0, 10);
const anyDay = fc
  .integer({ min: Date.UTC(1900, 0, 1) / DAY, max: Date.UTC(2170, 11, 31) / DAY })
  .map((days) => written(days * DAY));

/** Whole months as `Date` counts them: too far into the next month means this month's last day. */
function byDate(date: string, months: number): number {
  const [year = NaN, month = NaN, day = NaN] = date.split('-').map(Number);
  const straight = Date.UTC(year, month - 1 + months, day);
  const lastDay = Date.UTC(year, month + months, 0);
  return Math.min(straight, lastDay);
}

describe('a day of the calendar', () => {
  test.each([
    ['2026-03-14', true],
    ['2028-02-29', true],
    ['2000-02-29', true],
    ['1900-02-28', true],
    ['2199-12-31', true],
    ['2027-02-29', false],
    ['2100-02-29', false],
    ['1900-02-29', false],
    ['2026-04-31', false],
    ['2026-13-01', false],
    ['2026-00-10', false],
    ['2026-01-00', false],
    ['2026-01-32', false],
    ['0026-03-14', false],
    ['2200-01-01', false],
    ['2026-3-14', false],
    ['14-03-2026', false],
    ['2026/03/14', false],
    [' 2026-03-14', false],
    ['2026-03-14T00:00', false],
    ['٢٠٢٦-٠٣-١٤', false],
    ['', false],
  ])('%j: %s', (text, real) => {
    expect(isCalendarDate(text)).toBe(real);
  });

  test('is what the calendar of the machine takes as one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1900, max: 2199 }),
        fc.integer({ min: 0, max: 14 }),
        fc.integer({ min: 0, max: 33 }),
        (year, month, day) => {
          const text = `${String(year)}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
          expect(isCalendarDate(text)).toBe(written(Date.UTC(year, month - 1, day)) === text);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('months later', () => {
  test.each([
    ['2026-03-14', 0, '2026-03-14'],
    ['2026-03-14', 1, '2026-04-14'],
    ['2026-01-31', 1, '2026-02-28'],
    ['2028-01-31', 1, '2028-02-29'],
    ['2026-01-31', 2, '2026-03-31'],
    ['2026-12-31', 2, '2027-02-28'],
    ['2028-02-29', 12, '2029-02-28'],
    ['2028-02-29', 48, '2032-02-29'],
    ['2026-11-30', 1.5, '2027-01-14'], // a month to 30 December, then half of the 31 days to 30 January
    ['2026-02-10', 0.5, '2026-02-24'], // half of 28 days
    ['2026-01-31', 0.999, '2026-02-27'], // never on or past the whole month's day
    ['2026-03-14', 0.01, '2026-03-14'], // a part of a day is dropped
  ])('%s and %d months: %s', (date, months, expected) => {
    expect(monthsAfter(date, months)).toBe(expected);
  });

  test('no date, no later date', () => {
    expect(monthsAfter('2027-02-29', 3)).toBeNull();
  });

  test('whole months are those of the calendar of the machine', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 300 }), (date, months) => {
        expect(monthsAfter(date, months)).toBe(written(byDate(date, months)));
      }),
      { numRuns: 3000 },
    );
  });

  test('a fraction is that part of the days between two whole months, rounded down', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.integer({ min: 0, max: 240 }),
        evenly(0, 1).filter((share) => share < 1),
        (date, whole, fraction) => {
          const months = whole + fraction;
          const from = byDate(date, Math.floor(months));
          const days = (byDate(date, Math.floor(months) + 1) - from) / DAY;
          const expected = from + Math.floor((months - Math.floor(months)) * days) * DAY;
          expect(monthsAfter(date, months)).toBe(written(expected));
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('more months are never an earlier day', () => {
    const months = evenly(0, 40);
    fc.assert(
      fc.property(anyDay, months, months, (date, one, other) => {
        const [soon, late] = [Math.min(one, other), Math.max(one, other)].map((each) =>
          monthsAfter(date, each),
        );
        expect((soon ?? '') <= (late ?? '')).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});
