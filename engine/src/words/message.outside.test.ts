// Source: intl-messageformat, which fills ICU messages whole; the catalogues' own messages are filled by both.
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { catalogues } from '../testing/speakers.ts';
import { fill } from './message.ts';

const theirs = (message: string, locale: string, values: Readonly<Record<string, string | number>>): string =>
  String(new IntlMessageFormat(message, locale, undefined, { ignoreTag: true }).format(values));

const textsIn = (value: unknown): string[] =>
  typeof value === 'string' ? [value] : Object.values(value as object).flatMap(textsIn);

/** Every name that a message may ask for, and every word that it may choose by. */
const namesIn = (text: string): string[] => [
  ...new Set([...text.matchAll(/\{\s*(\w+)\s*[,}]/g)].map((m) => m[1] ?? '')),
];
const choicesIn = (text: string): string[] => [
  ...new Set(['anything', ...[...text.matchAll(/([^\s{},]+)\s*\{/g)].map((m) => m[1] ?? '')]),
];
const isCounted = (text: string, name: string): boolean => text.includes(`{${name}, plural`);

describe.each(Object.entries(catalogues))('every message in %s', (_, words) => {
  const { locale } = words.numbers;

  test.each([0, 1, 2, 3, 1.5, 21, 1_000_000])('with counts of %s', (count) => {
    const differ = textsIn({ ...words, numbers: {} }).flatMap((text) =>
      choicesIn(text).flatMap((choice) => {
        const values = Object.fromEntries(
          namesIn(text).map((name) => [name, isCounted(text, name) ? count : choice]),
        );
        const [ours, expected] = [fill(text, locale, values), theirs(text, locale, values)];
        return ours === expected ? [] : [{ ours, expected }];
      }),
    );
    expect(differ).toEqual([]);
  });
});

test('a choice within a count, and a count within a choice', () => {
  for (const message of [
    '{n, plural, =0 {none} one {# {kind, select, a {apple} other {pear}}} other {# of {kind}}}!',
    '{kind, select, a {{n, plural, one {# apple} other {# apples}}} other {{n}}} # and { n }',
  ])
    for (const n of [0, 1, 2, 12_345])
      for (const kind of ['a', 'b'])
        expect(fill(message, 'fr', { n, kind })).toBe(theirs(message, 'fr', { n, kind }));
});

test.each(['{n', '{n, plural, one {#}}', '{n, plural, other {#}', 'a } b', '{n, date}'])(
  'what is no message is refused: %s',
  (message) => {
    expect(() => fill(message, 'en', { n: 1 })).toThrow(message);
  },
);

test('a value that is not given is missed, never left out in silence', () => {
  expect(() => fill('{rows} rows', 'en', {})).toThrow('no rows');
});
