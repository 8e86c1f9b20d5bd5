const SECOND = 1000;
const MINUTE = 60 * SECOND;

/** The moment at which a wait of so many minutes is over, in milliseconds since 1970. */
export const endOf = (now: number, minutes: number): number => now + minutes * MINUTE;

/** `2:05:09`, `4:30`, `0:00`: what is left, every second begun counted whole. */
export function clockText(milliseconds: number): string {
  const seconds = Math.max(0, Math.ceil(milliseconds / SECOND));
  const two = (value: number): string => String(value).padStart(2, '0');
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  return hours > 0
    ? `${String(hours)}:${two(minutes)}:${two(seconds % 60)}`
    : `${String(minutes)}:${two(seconds % 60)}`;
}

/** The time of day at which it ends; with the day of the week where that is another day. */
export function endText(end: number, now: number, locale: string): string {
  const isToday = new Date(end).toDateString() === new Date(now).toDateString();
  return new Intl.DateTimeFormat(locale, {
    hour: 'numeric',
    minute: '2-digit',
    ...(isToday ? {} : { weekday: 'long' }),
  }).format(end);
}
