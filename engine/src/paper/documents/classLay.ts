import type { FoundTable } from '../../cloth/index.ts';
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
import {
  buyLength,
  clothName,
  leftTexts,
  lengthTitle,
  NOT_KNOWN,
  savedText,
  wayRemarks,
  wayWords,
} from './clothTexts.ts';
import { namesOnTable, piecesTable } from './laidPieces.ts';
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
    piecesTable(each, cloth, speaker),
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
