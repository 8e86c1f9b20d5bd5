import { mm } from '../../units/index.ts';
import type { PaperDocument } from '../drawing/index.ts';
import {
  bold,
  column,
  figure as picture,
  flow,
  heading,
  list,
  paragraph,
  plain,
  plainTheme,
  sideBySide,
  table,
  type Block,
  type Theme,
} from '../layout/index.ts';
import { foldDiagram } from '../pictures/foldDiagram.ts';
import { panelRows } from '../pictures/panelRows.ts';
import { curveTables } from './cardParts/curves.ts';
import { cardFigures } from './cardParts/figures.ts';
import { isCharted } from '../pictures/pieces/charted.ts';
import { panelChart, partsTable } from './cardParts/pieces.ts';
import { riseTexts } from './cardParts/rises.ts';
import { noticeLead } from './noticeTexts.ts';
import { documentOf, sheetOf, titleOf, type PaperInput } from './paperSet.ts';
import { rowPlace, stripsText } from './strips.ts';

/** Sizes tried, from the roomiest: the card is one page. Below the last it would not be read at arm's length. */
const scales = [1, 0.93, 0.86, 0.8, 0.74, 0.68];

/** What has a place on the card: the table of rows, which the ribbon list has too, and small pictures of the parts. */
interface Room {
  readonly scale: number;
  readonly rows: boolean;
  readonly pictures: boolean;
  /** Height of the drawings, of their usual height. */
  readonly tall: number;
}

const leastRoom: Room = { scale: scales.at(-1) ?? 1, rows: false, pictures: false, tall: 0.66 };

/** Tried in this order. Small pictures are no reason for small words. */
const rooms: readonly Room[] = [
  ...scales.slice(0, 4).map((scale) => ({ scale, rows: true, pictures: true, tall: 1 })),
  ...scales.map((scale) => ({ scale, rows: true, pictures: false, tall: 1 })),
  ...scales.map((scale) => ({ scale, rows: false, pictures: false, tall: 1 })),
  ...scales.slice(-2).map((scale) => ({ scale, rows: false, pictures: false, tall: 0.8 })),
];

/** Whether a card tells what its cloth takes. */
interface Tells {
  readonly cloth: boolean;
}

/** The card: one page to cut and chalk from, with the reason of every number on it. */
export function card(input: PaperInput, tells: Tells = { cloth: true }): PaperDocument {
  const { speaker, fonts } = input;
  const { papers } = speaker.words;
  const of = sheetOf(input, papers.card);
  for (const room of rooms) {
    const pages = flow(blocksOf(input, room, tells), of, fonts, scaled(room.scale));
    if (pages.length === 1) return documentOf(input, papers.card, pages);
  }
  const { scale } = leastRoom;
  return documentOf(input, papers.card, flow(blocksOf(input, leastRoom, tells), of, fonts, scaled(scale)));
}

/** The card is denser than other papers: a table of numbers, read one at a time. */
function scaled(scale: number): Theme {
  const small = (value: Theme['body']) => mm(value * scale);
  return {
    ...plainTheme,
    body: small(plainTheme.body),
    small: small(plainTheme.small),
    heading1: small(plainTheme.heading1),
    heading2: small(plainTheme.heading2),
    heading3: small(plainTheme.heading3),
    gap: small(mm(1.2)),
    aboveHeading: small(mm(3)),
    cellPadding: small(mm(0.55)),
    gutter: mm(4),
  };
}

/** Drawings shrink with the letters, but less: their own words must be read too. */
const TALLEST = mm(135);

function blocksOf(input: PaperInput, { scale, rows, pictures, tall }: Room, tells: Tells): Block[] {
  const { plan, speaker } = input;
  const { papers } = speaker.words;
  const rises = riseTexts(plan, speaker);
  return [
    heading(1, titleOf(input)),
    paragraph(subtitle(input), { quiet: true }),
    sideBySide(
      {
        share: 1,
        blocks: isCharted(plan)
          ? panelChart(plan, speaker, mm(TALLEST * 0.9 * scale * tall))
          : foldBlocks(input, scale * tall),
      },
      {
        share: 1,
        blocks: [
          heading(3, isCharted(plan) ? papers.rowsHeadingPanels : papers.rowsHeading),
          picture(panelRows(plan, speaker), { maxHeight: mm(TALLEST * 0.75 * scale * tall) }),
          paragraph(papers.rowsCaption, { size: 'small', quiet: true }),
          ...(rows ? rowsTable(input) : [paragraph(papers.rowsElsewhere, { size: 'small', quiet: true })]),
        ],
      },
    ),
    ...curveTables(input),
    ...(rises.length === 0
      ? []
      : [heading(3, papers.risesHeading), paragraph(`${papers.risesCaption} ${rises.join(' · ')}`)]),
    ...partsTable(plan, speaker, pictures),
    heading(3, papers.numbersHeading),
    numbersTable(input, tells),
    ...noticesBlock(input),
  ];
}

/** Cut, waist and finished length. */
export function subtitle({ plan, speaker }: Pick<PaperInput, 'plan' | 'speaker'>): string {
  const { cuts, waists } = speaker.words;
  const { finishedLength } = plan.skirt;
  return [
    capital(cuts[plan.request.cut.kind]),
    waists[plan.request.waist.kind],
    `${speaker.name(finishedLength)} ${speaker.value(finishedLength)}`,
  ].join(' · ');
}

function foldBlocks(input: PaperInput, scale: number): Block[] {
  const { plan, speaker } = input;
  const { papers } = speaker.words;
  return [
    heading(3, plan.cloth.chosen.headToTail ? papers.markHeadingWhole : papers.markHeading),
    picture(foldDiagram(plan, speaker), { maxHeight: mm(TALLEST * scale) }),
    paragraph(markCaption(input), {
      size: 'small',
      quiet: true,
    }),
  ];
}

function markCaption({ plan, speaker }: PaperInput): string {
  const { papers } = speaker.words;
  if (plan.skirt.marking === 'straight widths') return papers.markCaptionWidths;
  return plan.cloth.chosen.headToTail ? papers.markCaptionWhole : papers.markCaption;
}

/** Number, value, and how it is got: each figure says its own. */
function numbersTable({ plan, speaker }: PaperInput, tells: Tells): Block {
  const { papers } = speaker.words;
  return table(
    [column(papers.what, 1.15), column(papers.value, 0.62), column(papers.howGot, 3)],
    cardFigures(plan, speaker, tells).map(({ name, figure }) => [
      capital(name),
      [bold(speaker.value(figure))],
      speaker.working(figure) ?? '',
    ]),
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function rowsTable({ plan, speaker }: PaperInput): Block[] {
  const { rows } = plan.ribbons;
  if (rows.length === 0) return [];
  const { papers } = speaker.words;
  return [
    table(
      [
        column(papers.row, 0.5),
        column(papers.ribbon, 1.6),
        column(papers.fromRawEdge, 0.95),
        column(papers.fromHem, 0.95),
        column(papers.cutStrips, 1.6),
      ],
      rows.map((row) => [
        String(row.number),
        `${speaker.colour(row.colour)} ${speaker.value(row.width)}`,
        [bold(rowPlace(row, plan.skirt, speaker))],
        speaker.value(row.fromHem),
        stripsText(row, speaker),
      ]),
    ),
  ];
}

function noticesBlock({ plan, speaker }: PaperInput): Block[] {
  if (plan.notices.length === 0) return [];
  const { papers } = speaker.words;
  return [
    heading(3, papers.noticesHeading),
    list(
      plan.notices.map((each) => [
        bold(`${speaker.text(papers.lead, { what: noticeLead(each, speaker) })} `),
        plain(speaker.notice(each.notice)),
      ]),
      'dot',
    ),
  ];
}
