/** Dates of the civil calendar, written YYYY-MM-DD: counted out, so that no time zone can move one. */

const WRITTEN = /^((?:19|20|21)\d\d)-(\d\d)-(\d\d)$/;
const MONTHS_PER_YEAR = 12;

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysIn = (year: number, month: number): number =>
  [31, isLeap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? NaN;

interface Day {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
}

/** Null where the text is no day of the calendar from 1900 to 2199. */
function dayOf(text: string): Day | null {
  const found = WRITTEN.exec(text);
  if (!found) return null;
  const [year = NaN, month = NaN, day = NaN] = found.slice(1).map(Number);
  return day >= 1 && day <= daysIn(year, month) ? { year, month, day } : null;
}

/** Whether a text is a real day, written YYYY-MM-DD: 2027-02-29 is none. */
export const isCalendarDate = (text: string): boolean => dayOf(text) !== null;

const padded = (value: number, digits: number): string => String(value).padStart(digits, '0');
const written = ({ year, month, day }: Day): string =>
  `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;

/** The same day of the month so many months on; the month's last day where it has no such day. */
function wholeMonthsOn({ year, month, day }: Day, months: number): Day {
  const count = year * MONTHS_PER_YEAR + (month - 1) + months;
  const then = { year: Math.floor(count / MONTHS_PER_YEAR), month: (count % MONTHS_PER_YEAR) + 1 };
  return { ...then, day: Math.min(day, daysIn(then.year, then.month)) };
}

/** Days from a day to one at most a month later. */
const daysBetween = (from: Day, to: Day): number =>
  to.month === from.month ? to.day - from.day : daysIn(from.year, from.month) - from.day + to.day;

/** A day at most a month later. */
function daysOn(from: Day, days: number): Day {
  const over = from.day + days - daysIn(from.year, from.month);
  return over > 0
    ? { ...wholeMonthsOn({ ...from, day: 1 }, 1), day: over }
    : { ...from, day: from.day + days };
}

/**
 * The date a number of months (at least 0) after another. A month is a calendar month: from the 31st to the 31st, or to the last day of a
 * month that has none. A fraction is that part of the days from the last whole month's day to the next one's, in whole days,
 * rounded down: a date that warns is never late. Null where `date` is no date.
 */
export function monthsAfter(date: string, months: number): string | null {
  const start = dayOf(date);
  if (!start) return null;
  const whole = Math.floor(months);
  const from = wholeMonthsOn(start, whole);
  const days = Math.floor((months - whole) * daysBetween(from, wholeMonthsOn(start, whole + 1)));
  return written(daysOn(from, days));
}
