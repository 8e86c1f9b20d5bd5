import type { FoundCloth, FoundTable } from '../../cloth/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import type { ClassPlan, PlannedCloth } from '../../workshop/index.ts';
import type { Drawing, PaperDocument, PaperFonts } from '../drawing/index.ts';
import {
  bold,
  column,
  figure,
  flow,
  heading,
  list,
  pageBreak,
  paragraph,
  plain,
  table,
  type Block,
} from '../layout/index.ts';
import { chalkedLay, chalkedSheet, type ChalkedLook } from '../pictures/chalk/chalkedLay.ts';
import { numbered, type NumberedPiece } from '../pictures/chalk/numbered.ts';
import { namesAmong } from '../pictures/layNames.ts';
import { namedSheet, titleOf } from './paperSet.ts';

/** What the papers of a class are made from. */
export interface ClassPaperInput {
  readonly plan: ClassPlan;
  readonly speaker: Speaker;
  readonly fonts: PaperFonts;
  /** Day on the papers, told by whoever prints them; null leaves it off. */
  readonly date: Date | null;
}

/** Least and most of paper that the cloth's width takes in a drawing to chalk from. */
const DEEPEST = mm(96);
const SHALLOWEST = mm(46);

/** The cutting layouts of a class: what each cloth takes, the ways to lay it, and each length drawn to chalk from. */
export function classLayPaper(input: ClassPaperInput): PaperDocument {
  const { plan, speaker, fonts, date } = input;
  const { workshop } = speaker.words;
  const title = classTitle(input);
  const paper = plan.skirts.length > 1 ? workshop.classLays : workshop.layTitle;
  const of = namedSheet(title, plan.request.paper, input, paper);
  const width = mm(of.size.width - 2 * of.margin);
  const blocks: Block[] = [
    heading(1, paper),
    heading(2, workshop.clothsHeading),
    clothsTable(input),
    ...noticeBlocks(input),
    ...plan.cloths.flatMap((cloth, i) => [
      ...(i > 0 ? [pageBreak] : []),
      ...clothBlocks(cloth, input, width),
    ]),
  ];
  return {
    title: `${title} · ${paper}`,
    language: speaker.language,
    date,
    pages: flow(blocks, of, fonts),
  };
}

/** What the maker called her class; of a skirt by itself what she called that, or whom it is for. */
export function classTitle({ plan, speaker }: Pick<ClassPaperInput, 'plan' | 'speaker'>): string {
  const [only, ...others] = plan.skirts;
  if (plan.request.name !== '') return plan.request.name;
  return only && others.length === 0
    ? titleOf({ plan: only.plan, speaker })
    : speaker.words.workshop.titlePlain;
}

/** What a cloth is called, on paper and in a table. */
export const clothName = ({ name, options, shares }: PlannedCloth, speaker: Speaker): string =>
  name || options.name || plainName(shares, speaker);

function plainName(shares: PlannedCloth['shares'], { words: { workshop, items } }: Speaker): string {
  if (shares.every(({ which }) => which === 'lining')) return items.lining;
  return shares.some(({ which }) => which === 'own') ? workshop.clothPlain : workshop.clothOther;
}

/** One line for each cloth: whose skirts, how they are laid, what that takes, saves and leaves, what to buy. */
function clothsTable({ plan, speaker }: ClassPaperInput): Block {
  const { workshop, papers, lays } = speaker.words;
  const isOne = plan.skirts.every(({ label }) => label === '');
  return table(
    [
      column(workshop.cloth, 1.1),
      ...(isOne ? [] : [column(workshop.skirts, 2)]),
      column(workshop.way, 1),
      column(workshop.used, 1.1),
      column(workshop.saved, 0.9),
      column(workshop.leftOverHeading, 1.1),
      column(papers.toBuy, 0.9),
    ],
    plan.cloths.map((cloth) => [
      [bold(clothName(cloth, speaker))],
      ...(isOne ? [] : [cloth.shares.map(({ skirt }) => skirt.label).join(', ')]),
      lays[cloth.chosen.kind],
      speaker.value(cloth.chosen.clothBefore),
      savedText(cloth.chosen, speaker),
      leftTexts(cloth.chosen, speaker).join('\n') || workshop.nothing,
      [bold(buyLength(cloth.chosen, speaker))],
    ]),
  );
}

const NOTHING = 0.5;
/** What a lay saves against the same skirts laid by hand, one after the other. */
export function savedText({ saved }: FoundCloth, speaker: Speaker): string {
  if (!saved) return NOT_KNOWN;
  return saved.value > NOTHING ? speaker.value(saved) : speaker.words.workshop.nothing;
}

/** Where there is nothing to compare with, or nothing to tell. */
const NOT_KNOWN = '–';

export const buyLength = ({ toBuy }: FoundCloth, speaker: Speaker): string =>
  toBuy.value > NOTHING ? speaker.value(toBuy) : speaker.words.workshop.nothing;

/** The largest rectangle left of each length. */
export const leftTexts = ({ tables }: FoundCloth, speaker: Speaker): string[] =>
  tables.flatMap(({ leftOver }) =>
    leftOver
      ? [
          speaker.text(speaker.words.papers.leftOverSize, {
            across: speaker.length(leftOver.across),
            along: speaker.length(leftOver.along),
          }),
        ]
      : [],
  );

/** What of the cloths somebody should know; what is about a single skirt is on its own papers. */
function noticeBlocks({ plan, speaker }: ClassPaperInput): Block[] {
  const { papers, levels } = speaker.words;
  const said = plan.notices
    .filter(({ label, notice }) => label === null || notice.level === 'problem')
    .map(({ label, notice }) => [
      bold(
        `${speaker.text(papers.lead, { what: [levels[notice.level], label].filter(Boolean).join(' · ') })} `,
      ),
      plain(speaker.notice(notice)),
    ]);
  return said.length === 0 ? [] : [list(said, 'dot')];
}

function clothBlocks(cloth: PlannedCloth, input: ClassPaperInput, width: Mm): Block[] {
  const { speaker } = input;
  const { workshop } = speaker.words;
  const { chosen } = cloth;
  const title = speaker.text(workshop.clothHeading, { cloth: clothName(cloth, speaker), lay: chosen.kind });
  return [
    heading(2, title),
    heading(3, workshop.waysHeading),
    waysTable(cloth, speaker),
    ...chosen.tables.flatMap((each, i) => [
      ...(i > 0 ? [pageBreak] : []),
      heading(3, lengthTitle(each, speaker)),
      ...lengthBlocks(each, cloth, input, width),
    ]),
  ];
}

/** Which length a table lies on. */
export function lengthTitle({ from }: FoundTable, speaker: Speaker): string {
  const { workshop } = speaker.words;
  if (from.length === null) return workshop.fromBolt;
  const length = speaker.length(from.length);
  return from.name === ''
    ? speaker.text(workshop.fromLengthPlain, { length })
    : speaker.text(workshop.fromLength, { name: from.name, length });
}

/** Every way side by side: what it takes and saves, what it asks of her hands. */
function waysTable({ ways, chosen }: PlannedCloth, speaker: Speaker): Block {
  const { workshop, papers, lays } = speaker.words;
  return table(
    [column('', 2.6), column(workshop.used, 1), column(workshop.saved, 0.8), column(papers.toBuy, 0.8)],
    ways.map((way) => [
      [
        bold(lays[way.kind]),
        plain(`\n${[wayRemarks(way, way === chosen, speaker), ...wayWords(way, speaker)].join('\n')}`),
      ],
      way.fits ? speaker.value(way.clothBefore) : NOT_KNOWN,
      way.fits ? savedText(way, speaker) : NOT_KNOWN,
      way.fits ? [bold(buyLength(way, speaker))] : NOT_KNOWN,
    ]),
  );
}

/** Whether a way is taken or can't be, what it asks, and how many outlines are chalked. */
export function wayRemarks(way: FoundCloth, isChosen: boolean, speaker: Speaker): string {
  const { workshop, papers } = speaker.words;
  const pieces = way.tables.reduce((sum, each) => sum + each.pieces.length, 0);
  return [
    isChosen && way.fits ? papers.layChosen : '',
    way.fits ? speaker.text(workshop.outlines, { pieces }) : papers.layDoesNotFit,
    way.fits && way.proven ? workshop.leastPossible : '',
  ]
    .filter((each) => each !== '')
    .join(', ');
}

/** What a way asks of her hands; why it can't be. */
const wayWords = (way: FoundCloth, speaker: Speaker): string[] =>
  way.fits
    ? [speaker.words.workshop.asks[way.kind], ...way.notices.map(speaker.notice)]
    : way.notices.filter(({ level }) => level === 'problem').map(speaker.notice);

/** One length of cloth, drawn to chalk from, and its pieces in a table. */
function lengthBlocks(
  each: FoundTable,
  cloth: PlannedCloth,
  { speaker }: ClassPaperInput,
  width: Mm,
): Block[] {
  const { workshop } = speaker.words;
  const nameOf = namesOnTable(cloth, speaker);
  const drawings = chalkedLay(each, { speaker, nameOf, width, most: DEEPEST, least: SHALLOWEST });
  const caption = `${speaker.text(workshop.chalkCaption, {
    left: speaker.words.tableEdges[each.left],
    top: speaker.words.tableEdges[each.top],
  })} ${workshop.washedCaption}`;
  return [
    ...drawings.map((drawn) => figure(drawn)),
    paragraph(caption, { size: 'small', quiet: true }),
    piecesTable(numbered(each), nameOf, speaker),
  ];
}

/** For a screen: how wide, the cloth in its own colour, whose pieces stand out. */
export type LengthLook = Partial<Pick<ChalkedLook, 'width' | 'least' | 'cloth' | 'wearer'>>;

/** Each length of the chosen lay as a drawing of its own, all its stretches in one. */
export const lengthPictures = (cloth: PlannedCloth, speaker: Speaker, look: LengthLook = {}): Drawing[] =>
  cloth.chosen.tables.map((each) =>
    chalkedSheet(each, {
      speaker,
      nameOf: namesOnTable(cloth, speaker),
      width: PICTURE_WIDTH,
      most: DEEPEST,
      least: SHALLOWEST,
      ...look,
    }),
  );

const PICTURE_WIDTH = mm(260);

/** What each piece is called among those of its own skirt. */
export function namesOnTable(
  { shares }: Pick<PlannedCloth, 'shares'>,
  speaker: Speaker,
): (piece: FoundTable['pieces'][number]) => string {
  const names = new Map(
    shares.map(({ skirt: { label, plan } }) => [
      label,
      namesAmong(
        plan.skirt.panels,
        plan.skirt.parts.flatMap(({ name, count }) => Array.from({ length: count }, () => name)),
        speaker,
      ),
    ]),
  );
  return (piece) => names.get(piece.wearer)?.(piece) ?? '';
}

/** A piece on the cloth in words. */
export interface ToldPiece {
  readonly number: number;
  /** Empty for a skirt by itself. */
  readonly wearer: string;
  /** What it is, and what is particular about how it lies. */
  readonly name: string;
  readonly along: string;
  readonly across: string;
}

/** The pieces of one length in words, numbered as they are in its drawing. */
export function toldPieces(
  each: FoundTable,
  cloth: Pick<PlannedCloth, 'shares'>,
  speaker: Speaker,
): ToldPiece[] {
  const { workshop } = speaker.words;
  const nameOf = namesOnTable(cloth, speaker);
  const range = (from: number, to: number): string =>
    speaker.text(workshop.range, { from: length(from, speaker), to: length(to, speaker) });
  return numbered(each).map(({ number, piece, box }) => ({
    number,
    wearer: piece.wearer,
    name: [nameOf(piece), piece.onFold ? workshop.onFold : '', piece.turned ? workshop.headDown : '']
      .filter((text) => text !== '')
      .join(', '),
    along: range(box.left, box.right),
    across: range(box.top, box.bottom),
  }));
}

function piecesTable(
  pieces: readonly NumberedPiece[],
  nameOf: ReturnType<typeof namesOnTable>,
  speaker: Speaker,
): Block {
  const { workshop } = speaker.words;
  const isNamed = pieces.some(({ piece }) => piece.wearer !== '');
  const range = (from: number, to: number): string =>
    speaker.text(workshop.range, { from: length(from, speaker), to: length(to, speaker) });
  return table(
    [
      column(workshop.number, 0.35),
      ...(isNamed ? [column(workshop.whose, 0.9)] : []),
      column(workshop.piece, 1.1),
      column(workshop.along, 1.1),
      column(workshop.across, 1.1),
      column(workshop.corners, 2.4),
    ],
    pieces.map(({ number, piece, box, corners, isBox }) => [
      String(number),
      ...(isNamed ? [[bold(piece.wearer)]] : []),
      [nameOf(piece), piece.onFold ? workshop.onFold : '', piece.turned ? workshop.headDown : '']
        .filter((each) => each !== '')
        .join(', '),
      range(box.left, box.right),
      range(box.top, box.bottom),
      isBox
        ? workshop.allRound
        : corners
            .map(({ x, y }) =>
              speaker.text(workshop.corner, { along: length(x, speaker), across: length(y, speaker) }),
            )
            .join('; '),
    ]),
  );
}

/** A distance on the cloth: what binary fractions take below 0 is 0. */
const length = (value: number, speaker: Speaker): string => speaker.length(mm(Math.max(0, value)));
