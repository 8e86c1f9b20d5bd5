import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import type { Catalogue } from './catalogue.ts';
import { en } from './en.ts';
import { fr } from './fr.ts';
import { fill } from './message.ts';

type Ast = ReturnType<IntlMessageFormat['getAst']>;
interface Message {
  readonly path: string;
  readonly text: string;
}
/** Node kinds of the ICU parser. */
const [LITERAL, ARGUMENT] = [0, 1];
const kindOf = (node: Ast[number]): number => node.type;

/** Every message of a catalogue under its path; of a figure with a working, name and working apart. */
function messagesOf(words: Catalogue): Message[] {
  const walk = (value: unknown, path: string): Message[] =>
    typeof value === 'string'
      ? [{ path, text: value }]
      : Object.entries(value as object).flatMap(([key, inner]) => walk(inner, path ? `${path} ${key}` : key));
  return walk({ ...words, numbers: {} }, '');
}

const parse = (text: string, locale: string): Ast =>
  new IntlMessageFormat(text, locale, undefined, { ignoreTag: true }).getAst();

/** Each placeholder with how it is used: `rows plural`, `bound select`, `hem value`. */
function placeholders(ast: Ast): string[] {
  const found = ast.flatMap((node) => {
    if ('options' in node) {
      const kind = 'pluralType' in node ? 'plural' : 'select';
      const inside = Object.values(node.options).flatMap(({ value }) => placeholders(value));
      return [`${node.value} ${kind}`, ...inside];
    }
    return kindOf(node) === ARGUMENT && 'value' in node ? [`${node.value} value`] : [];
  });
  return [...new Set(found)].sort();
}

/** All that a message can come out as, its plurals' and choices' branches one by one; a placeholder is `§`. */
function readings(ast: Ast): string[] {
  return ast.reduce<string[]>(
    (before, node) => {
      const next =
        'options' in node
          ? Object.values(node.options).flatMap(({ value }) => readings(value))
          : [kindOf(node) === LITERAL && 'value' in node ? node.value : '§'];
      return before.flatMap((start) => next.map((end) => start + end));
    },
    [''],
  );
}

const pluralsOf = (ast: Ast): string[][] =>
  ast.flatMap((node) => {
    if (!('options' in node)) return [];
    const inside = Object.values(node.options).flatMap(({ value }) => pluralsOf(value));
    return 'pluralType' in node ? [Object.keys(node.options), ...inside] : inside;
  });

/** Signs, brackets, bare numbers and inputs of a working in their order; a figure's name is no operand. */
const arithmetic = (working: string): string[] =>
  [...working.matchAll(/\{(\w+)\}|[×÷+−√()]|\d+/g)]
    .map(([token]) => token)
    .filter((token) => !token.endsWith('_name}'));

const lettersOf = (text: string): string =>
  readings(parse(text, 'en'))
    .join(' ')
    .replace(/[^\p{L}]+/gu, ' ')
    .trim()
    .toLowerCase();

const english = messagesOf(en);
const french = new Map(messagesOf(fr).map(({ path, text }) => [path, text]));
const inFrench = (path: string): string => french.get(path) ?? '';

describe.each([
  ['English', en],
  ['French', fr],
])('%s', (_, words) => {
  const { locale } = words.numbers;
  const messages = messagesOf(words);

  test('every message says something, whatever the counts are', () => {
    const said = messages.flatMap(({ path, text }) => {
      const needs = placeholders(parse(text, locale));
      return [0, 1, 2, 5, 21, 1_000_000].map((count) => {
        const values = needs.map((need) => {
          const [name = '', kind] = need.split(' ');
          return [name, kind === 'plural' ? count : `‹${name}›`] as const;
        });
        return { path, line: fill(text, locale, Object.fromEntries(values)) };
      });
    });
    expect(
      said.filter(({ line }) => line.trim() === '' || /[{}#]|undefined/.test(line.replace('"#14716f"', ''))),
    ).toEqual([]);
  });

  test('every plural has a word for one and a word for more', () => {
    const plurals = messages.flatMap(({ text }) => pluralsOf(parse(text, locale)));
    expect(plurals.length).toBeGreaterThan(20);
    expect(plurals.filter((forms) => !forms.includes('one') || !forms.includes('other'))).toEqual([]);
  });

  test('an apostrophe is typographic: a straight one quotes in a message', () => {
    expect(messages.filter(({ text }) => text.includes("'"))).toEqual([]);
  });

  test('no space is doubled, or left at an end', () => {
    const lines = messages.flatMap(({ text }) => readings(parse(text, locale)));
    expect(lines.filter((line) => /[\s\u00a0]{2}|^[\s\u00a0]|[\s\u00a0]$/.test(line))).toEqual([]);
  });
});

test('both catalogues have the same messages, and the same figures have a working', () => {
  expect([...french.keys()].sort()).toEqual(english.map(({ path }) => path).sort());
});

test('every message takes the same placeholders, used the same way', () => {
  const taken = (locale: string, text: (message: Message) => string) =>
    Object.fromEntries(english.map((message) => [message.path, placeholders(parse(text(message), locale))]));
  expect(taken('fr', ({ path }) => inFrench(path))).toEqual(taken('en', ({ text }) => text));
});

test('a working is the same sum in both', () => {
  const workings = english.filter(({ path }) => /^figures \S+ 1$/.test(path));
  expect(workings.length).toBeGreaterThan(60);
  const sums = (text: (message: Message) => string) =>
    Object.fromEntries(workings.map((message) => [message.path, arithmetic(text(message))]));
  expect(sums(({ path }) => inFrench(path))).toEqual(sums(({ text }) => text));
});

describe('French typography', () => {
  const lines = [...french].flatMap(([path, text]) =>
    readings(parse(text, 'fr')).map((line) => ({ path, line })),
  );

  test('a no-break space stands before : ; ? ! % and inside « »', () => {
    expect(lines.filter(({ line }) => /[^\u00a0][:;?!%»]|^[:;?!%»]|«[^\u00a0]|«$/u.test(line))).toEqual([]);
    expect(lines.filter(({ line }) => /\u00a0[:;?!%»]/.test(line)).length).toBeGreaterThan(50);
  });

  test('no other mark has a space before it', () => {
    expect(lines.filter(({ line }) => /[\s\u00a0][.,…]/.test(line))).toEqual([]);
  });

  test('a number does not part from its unit', () => {
    expect(
      lines.filter(({ line }) => /\d (cm|mm|m|po)(?![\p{L}])/u.test(line) && !line.includes('"')),
    ).toEqual([]);
  });
});

/** Words that are the same in both languages. */
const sameInBoth = new Set([
  'minute',
  'minutes',
  'ribbonwright',
  'orange',
  'beige',
  'turquoise',
  'h min', // hours and minutes
  'min',
  'have', // the name of an option, typed the same in both
  'options',
  'arguments',
]);

test('what has words was translated', () => {
  const kept = english
    .map(({ path, text }) => ({ path, was: lettersOf(text), is: lettersOf(inFrench(path)) }))
    .filter(({ was, is }) => was !== '' && was === is);
  expect(kept.filter(({ was }) => !sameInBoth.has(was))).toEqual([]);
  const used = new Set(kept.map(({ was }) => was));
  expect([...sameInBoth].filter((word) => !used.has(word))).toEqual([]);
});
