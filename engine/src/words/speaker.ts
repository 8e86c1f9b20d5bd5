import { spelled, type Colour } from '../fields/index.ts';
import type { Figure, Notice, NoticeParam } from '../figure/index.ts';
import type { Language, RequestError, SkirtRequest } from '../request/index.ts';
import type { Sentence } from '../sewing/index.ts';
import {
  decimal,
  mm,
  showLength,
  showMoney,
  showFine,
  showShopLength,
  type MeasureSystem,
  type Mm,
  type Money,
  type ShowLength,
} from '../units/index.ts';
import type { Catalogue, FigureCode, FigureWords, NoticeCode } from './catalogue.ts';
import { catalogueOf } from './languages.ts';
import { fill } from './message.ts';
import { addable, showExact, showMinutes, showValue } from './show.ts';

type Values = Readonly<Record<string, NoticeParam>>;

/** Says figures, notices and steps in one language, in one system of measure. */
export interface Speaker {
  readonly language: Language;
  readonly words: Catalogue;
  /** Fills a message of the catalogue. */
  readonly text: (message: string, values?: Values) => string;
  readonly length: (value: Mm) => string;
  readonly shopLength: (value: Mm) => string;
  /** A length finer than a chalk mark: one that repeats, and would add up to more. */
  readonly fineLength: (value: Mm) => string;
  /** A plain number, to three places. */
  readonly number: (value: number) => string;
  readonly value: (figure: Figure) => string;
  /** What a figure is called. */
  readonly name: (figure: Figure) => string;
  /** How a figure was got, its result included; null where it was measured or chosen. */
  readonly working: (figure: Figure) => string | null;
  readonly notice: (notice: Notice) => string;
  readonly sentence: (sentence: Sentence) => string;
  /** Pieces by their names in the engine (`tier 2`, `part waistband`), as a list in a sentence. */
  readonly pieces: (names: readonly string[]) => string;
  /** A list whose items have commas of their own; of none nothing. */
  readonly apart: (items: readonly string[]) => string;
  readonly colour: (colour: Colour) => string;
  /** What a colour that somebody typed in this language is called in a document; null where it is of no known name. */
  readonly readColour: (typed: string) => string | null;
  readonly money: (money: Money) => string;
  readonly minutes: (value: number) => string;
  /** What is wrong and what would be right, with the field and what was read there. */
  readonly error: (error: RequestError) => string;
  /** The same where the field is in sight: what would be right alone. */
  readonly fault: (error: RequestError) => string;
}

export interface SpeakerOptions {
  readonly language: Language;
  readonly measure: MeasureSystem;
  readonly mark: Mm;
}

/** A speaker in a language, once its words are there. */
export const speakerFor = async (options: SpeakerOptions): Promise<Speaker> =>
  speakerOver(await catalogueOf(options.language), options);

/** The speaker that a request asks for. */
export const speakerOf = (request: Pick<SkirtRequest, 'language' | 'measure' | 'mark'>): Promise<Speaker> =>
  speakerFor(request);

/** Names of pieces, which as terms bear their kind: messages choose by bare words like ‘front’. */
const termsOf = (kind: string, names: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(names).map(([name, said]) => [`${kind} ${name}`, said]));

/** A day of the calendar as the engine writes it. */
const isDate = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);

/** The speaker over words that are at hand, which are those of its language. */
export function speakerOver(words: Catalogue, { language, measure, mark }: SpeakerOptions): Speaker {
  const { locale } = words.numbers;
  const how: ShowLength = { system: measure, mark, words: words.numbers };
  const terms: Readonly<Record<string, string>> = {
    ...measureNames(words),
    ...words.lays,
    ...words.weights,
    ...words.kinds,
    ...termsOf('panel', words.panels),
    ...termsOf('part', words.parts),
    ...termsOf('colour', words.colours),
  };
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  const dateIn = (day: string): string => days.format(new Date(day));
  const value = (figure: Figure): string => showValue(figure, how, words);
  const several = new Intl.ListFormat(locale);
  /** ‘panel gore 3’ is a name and its number. */
  const named = (name: string): string => {
    const [, plain = name, number] = /^(.*?)(?: (\d+))?$/.exec(name) ?? [];
    if (plain === 'tier') return fill(words.papers.tierNumber, locale, { number: number ?? '' });
    return number === undefined ? (terms[plain] ?? plain) : `${terms[plain] ?? plain}\u00a0${number}`;
  };
  const listed = (pieces: readonly string[]): string => several.format(pieces.map(named));
  const said = (param: NoticeParam): string | number => {
    if (typeof param === 'number') return param;
    if (typeof param === 'string') return isDate(param) ? dateIn(param) : (terms[param] ?? param);
    // Messages choose their plurals by counts.
    return param.kind === 'count' ? param.value : value(param);
  };
  const text = (message: string, values: Values = {}): string =>
    fill(
      message,
      locale,
      Object.fromEntries(Object.entries(values).map(([key, param]) => [key, said(param)])),
    );
  const fault = ({ code, params }: RequestError): string => {
    const limits = Object.entries(params).map(([key, param]) => [
      key,
      code === 'lengthRange' && typeof param === 'number' ? showLength(mm(param), how) : param,
    ]);
    return text(words.errors[code], Object.fromEntries(limits) as Values);
  };
  const wordsOf = (figure: Figure): FigureWords => words.figures[figure.rule as FigureCode];
  const name = (figure: Figure): string => {
    const found = wordsOf(figure);
    return typeof found === 'string' ? found : found[0];
  };
  return {
    language,
    words,
    text,
    value,
    name,
    length: (length) => showLength(length, how),
    shopLength: (length) => showShopLength(length, how),
    fineLength: (length) => showFine(length, how),
    number: (value) => decimal(value, words.numbers, 3),
    working(figure) {
      const found = wordsOf(figure);
      if (typeof found === 'string') return null;
      // An estimate's ± belongs to the result; within a sum it would only be in the way.
      const inputs = Object.entries(figure.inputs).flatMap(([key, input]) => [
        [key, addable(input, how, words)],
        [`${key}_name`, name(input)],
      ]);
      return `${fill(found[1], locale, Object.fromEntries(inputs) as Record<string, string>)} = ${result(figure, how, words, value)}`;
    },
    notice: (notice) => capital(text(words.notices[notice.code as NoticeCode], notice.params)),
    sentence: ({ code, params, pieces }) =>
      text(words.sentences[code], { ...params, ...(pieces.length > 0 ? { pieces: listed(pieces) } : {}) }),
    pieces: listed,
    apart: ([first = '', ...others]) =>
      others.reduce((one, other) => text(words.papers.apart, { one, other }), first),
    colour: (colour) => (colour.preset ? words.colours[colour.preset] : colour.name),
    readColour: (typed) => {
      const preset = Object.entries(words.colours).find(([, name]) => plain(name) === plain(typed));
      return preset ? spelled(preset[0]) : null;
    },
    money: (money) => showMoney(money, locale),
    minutes: (minutes) => showMinutes(minutes, words),
    error: (error) =>
      text(words.command.errorIn, {
        path: error.path || words.command.document,
        read: error.read,
        fault: fault(error),
      }).replace(/ {2,}/g, ' '),
    fault,
  };
}

/** Rounding to a mark is part of how a figure was got, and told with it. */
function result(
  figure: Figure,
  how: ShowLength,
  words: Catalogue,
  value: (figure: Figure) => string,
): string {
  const { exact } = figure;
  if (figure.kind !== 'length') return value(figure);
  if (exact === undefined || Math.abs(exact - figure.value) < 0.05)
    return figure.plusMinus === undefined ? addable(figure, how, words) : value(figure);
  return fill(words.papers.chalkedAs, words.numbers.locale, {
    exact: showExact(mm(exact), how),
    value: value(figure),
  });
}

/** Letters without their case and accents: « Bleu pâle » is found as it is typed in haste. */
const plain = (text: string): string => text.trim().normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** A sentence may begin with the name of a measurement. */
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Measurements in a notice go by the names that their figures have. */
const measureNames = ({ figures }: Catalogue): Record<string, string> =>
  Object.fromEntries(
    (
      [
        'waist',
        'hip',
        'waistToHem',
        'waistToFloor',
        'height',
        'hipDepth',
        'calf',
        'thigh',
        'levelFront',
        'levelBack',
        'levelLeft',
        'levelRight',
      ] as const
    ).map((name) => {
      const found = figures[`body.${name}`];
      return [name, typeof found === 'string' ? found : found[0]];
    }),
  );
