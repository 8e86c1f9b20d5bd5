import { IntlMessageFormat } from 'intl-messageformat';

const made = new Map<string, IntlMessageFormat>();

/** Fills an ICU message. Messages are parsed once for each language. */
export function fill(
  message: string,
  locale: string,
  values: Readonly<Record<string, string | number>>,
): string {
  const key = `${locale} ${message}`;
  let format = made.get(key);
  if (!format) {
    format = new IntlMessageFormat(message, locale, undefined, { ignoreTag: true });
    made.set(key, format);
  }
  return String(format.format(values));
}
