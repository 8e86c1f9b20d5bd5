import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { besideLays, laidFromShelf, toldBeside, type ClassPlan, type HowMany } from '../../workshop/index.ts';
import type { PaperDocument, PaperFonts } from '../drawing/index.ts';
import {
  bold,
  column,
  flow,
  heading,
  list,
  pageBreak,
  plain,
  table,
  together,
  type Block,
} from '../layout/index.ts';
import { clothBlocks, shelfBlocks } from './chalkBlocks.ts';
import { buyLength, clothName, leftTexts, savedText, usedLength, NOT_KNOWN } from './clothTexts.ts';
import { namedSheet, titleOf } from './paperSet.ts';
import { shelfTexts } from './shelfTexts.ts';

/** What the papers of a class are made from. */
export interface ClassPaperInput {
  readonly plan: ClassPlan;
  /** What can be cut from what is at hand. */
  readonly shelf: readonly HowMany[];
  readonly speaker: Speaker;
  readonly fonts: PaperFonts;
  /** Day on the papers, told by whoever prints them; null leaves it off. */
  readonly date: Date | null;
}

/** The cutting layouts of a class: what each cloth takes, the ways to lay it, and each length drawn to chalk from. */
export function classLayPaper(input: ClassPaperInput): PaperDocument {
  const { plan, shelf, speaker, fonts, date } = input;
  const { workshop } = speaker.words;
  const title = classTitle(input);
  const paper = plan.skirts.length > 1 ? workshop.classLays : workshop.layTitle;
  const of = namedSheet(title, plan.request.paper, input, paper);
  const width = mm(of.size.width - 2 * of.margin);
  const blocks: Block[] = [
    heading(1, paper),
    heading(2, workshop.clothsHeading),
    clothsTable(input),
    ...shelfLines(input),
    ...noticeBlocks(input),
    ...plan.cloths.flatMap((cloth, i) => [
      ...(i > 0 ? [pageBreak] : []),
      ...clothBlocks(cloth, speaker, width),
      ...laidFromShelf({ cloths: [cloth] }, shelf).flatMap((some) => shelfBlocks(some, speaker, width)),
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
export function clothsTable({ plan, speaker }: Pick<ClassPaperInput, 'plan' | 'speaker'>): Block {
  const { workshop, papers, lays } = speaker.words;
  const isOne = plan.skirts.every(({ label }) => label === '');
  return table(
    [
      column(workshop.cloth, 1.1),
      ...(isOne ? [] : [column(workshop.skirts, 1.7)]),
      column(workshop.way, 1),
      column(workshop.used, 1.1),
      column(workshop.saved, 0.9),
      column(workshop.leftOverHeading, 1.5),
      column(papers.toBuy, 0.9),
    ],
    plan.cloths.map((cloth) => [
      [bold(clothName(cloth, speaker))],
      ...(isOne ? [] : [cloth.shares.map(({ skirt }) => skirt.label).join(', ')]),
      cloth.chosen.fits ? lays[cloth.chosen.kind] : NOT_KNOWN,
      usedLength(cloth.chosen, speaker),
      savedText(cloth.chosen, speaker),
      leftTexts(cloth.chosen, speaker).join('\n'),
      [bold(buyLength(cloth.chosen, speaker))],
    ]),
  );
}

function shelfLines({ plan, shelf, speaker }: ClassPaperInput): Block[] {
  const said = shelfTexts(shelf, plan, speaker);
  return said.length === 0
    ? []
    : [together(heading(3, speaker.words.workshop.shelfHeading), list(said, 'dot'))];
}

/** What of the cloths somebody should know; what is about a single skirt is on its own papers. */
function noticeBlocks({ plan, shelf, speaker }: ClassPaperInput): Block[] {
  const { papers, levels } = speaker.words;
  const said = besideLays(toldBeside(plan, shelf)).map(({ label, notice }) => [
    bold(
      `${speaker.text(papers.lead, { what: [levels[notice.level], label].filter(Boolean).join(' · ') })} `,
    ),
    plain(speaker.notice(notice)),
  ]);
  return said.length === 0 ? [] : [list(said, 'dot')];
}
