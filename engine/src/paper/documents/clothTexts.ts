import { boughtFor, clothJobOf, type FoundCloth, type FoundTable, type Rest } from '../../cloth/index.ts';
import type { Figure } from '../../figure/index.ts';
import type { Speaker } from '../../words/index.ts';
import { clothCalled } from '../pictures/clothInks.ts';
import { isByEye, shortOf, toldOf, type PlannedCloth } from '../../workshop/index.ts';

/** What a cloth is called, on paper and in a table. */
export const clothName = ({ name, options, shares }: PlannedCloth, speaker: Speaker): string =>
  name || options.name || plainName({ options, shares }, speaker);

/** A cloth and the way it is laid; that it fits in none. */
export function clothTitle(cloth: PlannedCloth, speaker: Speaker): string {
  const { clothHeading, clothHeadingNone } = speaker.words.workshop;
  const { kind, fits } = cloth.chosen;
  return speaker.text(fits ? clothHeading : clothHeadingNone, {
    cloth: clothName(cloth, speaker),
    lay: kind,
  });
}

/** The skirts that are laid on what is at hand where it is not enough for all. */
export const shelfTitle = (cloth: PlannedCloth, speaker: Speaker): string =>
  speaker.text(speaker.words.workshop.shelfLaid, {
    cloth: clothName(cloth, speaker),
    lay: cloth.chosen.kind,
    skirts: cloth.shares.map(({ skirt }) => skirt.label).join(', '),
  });

function plainName({ options, shares }: Pick<PlannedCloth, 'options' | 'shares'>, speaker: Speaker): string {
  const { workshop, items } = speaker.words;
  if (shares.every(({ which }) => which === 'lining')) return items.lining;
  const isOne = shares.every(({ which, skirt: { plan } }) => which === 'own' && plan.cloths.length === 1);
  return isOne ? workshop.clothPlain : clothCalled({ options }, speaker);
}

const NOTHING = 0.5;
/** What a lay saves against the same skirts laid by hand, one after the other. */
export function savedText({ saved, fits }: FoundCloth, speaker: Speaker): string {
  if (!saved || !fits) return NOT_KNOWN;
  return saved.value > NOTHING ? speaker.value(saved) : speaker.words.workshop.nothing;
}

/** Where there is nothing to compare with, or nothing to tell. */
export const NOT_KNOWN = '–';

/** What a lay uses before the wash; nothing is told of one that does not fit. */
export const usedLength = ({ clothBefore, fits }: FoundCloth, speaker: Speaker): string =>
  fits ? speaker.value(clothBefore) : NOT_KNOWN;

export function buyLength({ toBuy, fits }: Pick<FoundCloth, 'toBuy' | 'fits'>, speaker: Speaker): string {
  if (!fits) return NOT_KNOWN;
  return toBuy.value > NOTHING ? speaker.value(toBuy) : speaker.words.workshop.nothing;
}

/** What is left, of each length; nothing where there is only a rag. */
export function leftTexts(found: FoundCloth, speaker: Speaker): string[] {
  if (!found.fits) return [NOT_KNOWN];
  const sizes = sizesLeft(found, speaker);
  return sizes.length > 0 ? sizes : [speaker.words.workshop.nothing];
}

/** The largest rectangle left of each length, and what of it was not touched, as a tape measures them. */
const sizesLeft = ({ tables }: FoundCloth, speaker: Speaker): string[] =>
  tables.flatMap((table) =>
    restsOf(table).map(({ opened, count }) =>
      speaker.text(speaker.words.workshop.leftOverSize, {
        count,
        across: speaker.length(opened.across),
        along: speaker.length(opened.along),
      }),
    ),
  );

/** What is told of what is left of a table: of cloth worth keeping. */
export const restsOf = ({ leftOver, beneath, uncut }: FoundTable): Rest[] =>
  [leftOver, beneath, uncut].flatMap((rest) => rest ?? []);

/** What stays uncut that no drawing of a table shows: of its lower layer, and of a length at hand beyond its last table. */
export function uncutTexts({ beneath, uncut }: FoundTable, speaker: Speaker): string[] {
  const { workshop } = speaker.words;
  const said = (text: string, rest: Rest | null): string[] => {
    if (!rest) return [];
    const { along, across } = rest.opened;
    return [speaker.text(text, { along: speaker.length(along), across: speaker.length(across) })];
  };
  return [...said(workshop.beneath, beneath), ...said(workshop.uncut, uncut)];
}

/** Which length a table lies on; which part of it, where several are laid on it; and whether it is opened out. */
export function lengthTitle(table: FoundTable, { tables }: FoundCloth, speaker: Speaker): string {
  const { workshop } = speaker.words;
  const cloth = lengthName(table.from, speaker);
  if (table.where === 'opened') return speaker.text(workshop.openedOut, { cloth });
  const parts = tables.filter(({ from, where }) => from === table.from && where !== 'opened');
  if (parts.length < 2) return cloth;
  return speaker.text(workshop.lengthPart, {
    cloth,
    number: parts.indexOf(table) + 1,
    parts: parts.length,
  });
}

function lengthName({ name, length }: FoundTable['from'], speaker: Speaker): string {
  const { workshop } = speaker.words;
  if (length === null) return workshop.fromBolt;
  const long = speaker.length(length);
  return name === ''
    ? speaker.text(workshop.fromLengthPlain, { length: long })
    : speaker.text(workshop.fromLength, { name, length: long });
}

/** Lengths at hand that a lay leaves as they are. */
export function unusedTexts(cloth: PlannedCloth, speaker: Speaker): string[] {
  const { fits, tables } = cloth.chosen;
  if (!fits) return [];
  const cut = tables.filter(({ where }) => where === 'first' || where === 'another').map(({ from }) => from);
  return clothJobOf(cloth.options, []).lengths.flatMap(({ name, length, width }) => {
    if (length === null || length === 0) return [];
    const at = cut.findIndex((each) => each.name === name && each.length === length && each.width === width);
    if (at >= 0) {
      cut.splice(at, 1);
      return [];
    }
    const said = { named: name === '' ? 'no' : 'yes', name, length: speaker.length(length) };
    return [speaker.text(speaker.words.workshop.notCutFrom, said)];
  });
}

/** Whether a way is taken or can't be, what it asks, and how many outlines are chalked. */
export function wayRemarks(way: FoundCloth, isChosen: boolean, speaker: Speaker): string {
  const { workshop, papers } = speaker.words;
  const pieces = way.tables.reduce((sum, each) => sum + each.pieces.length, 0);
  return [
    isChosen && way.fits ? papers.layChosen : '',
    way.fits ? speaker.text(workshop.outlines, { pieces }) : papers.layDoesNotFit,
    way.fits && way.proven && !isByEye(way) ? workshop.leastPossible : '',
  ]
    .filter((each) => each !== '')
    .join(', ');
}

/** What a way asks of her hands; why it can't be. */
export const wayWords = (way: FoundCloth, speaker: Speaker): string[] => [
  ...(way.fits ? [speaker.words.workshop.asks[way.kind]] : []),
  ...wayNotices(way, speaker),
];

/** What there is to know of a way; of one that does not fit, why. */
export function wayNotices(way: FoundCloth, speaker: Speaker): string[] {
  const told = toldOf(way);
  if (way.fits) return told.map(speaker.notice);
  // What somebody of a class would need is told once, not of every way.
  const short = told.filter((each) => shortOf(each) !== null);
  const skirts = short.map(shortOf).join(', ');
  return [
    ...told.filter((each) => !short.includes(each)).map(speaker.notice),
    ...(skirts === '' ? [] : [speaker.text(speaker.words.workshop.tooLittleFor, { skirts })]),
  ];
}

/** How it is got what a lay takes, and what is bought for it. */
export function workingsOf(
  { clothAfter, clothBefore, toBuy }: Pick<FoundCloth, 'clothAfter' | 'clothBefore' | 'toBuy'>,
  speaker: Speaker,
): string[] {
  const needed = boughtFor(toBuy);
  const named = (figure: Figure): [string, Figure] => [speaker.name(figure), figure];
  // Where lengths at hand are used, what comes off the bolt is a part of what is used.
  const ofBolt: [string, Figure][] =
    needed && Math.abs(needed.value - clothBefore.value) > NOTHING
      ? [[speaker.words.workshop.fromBolt, needed]]
      : [];
  return [named(clothAfter), named(clothBefore), ...ofBolt, named(toBuy)].flatMap(([what, figure]) => {
    const working = speaker.working(figure);
    return working ? [`${speaker.text(speaker.words.papers.lead, { what })} ${working}`] : [];
  });
}

/** Why nothing is told of what a way saves, where that is so. */
export const savedNotes = ({ ways }: PlannedCloth, speaker: Speaker): string[] =>
  ways.some(({ fits, saved }) => fits && !saved) ? [speaker.words.workshop.savedUnknown] : [];
