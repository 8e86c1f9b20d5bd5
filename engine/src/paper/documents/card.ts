import type { Figure } from '../../figure/index.ts';
import type { Row } from '../../ribbon/index.ts';
import type { Ordinate } from '../../skirt/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
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
  together,
  type Block,
  type Theme,
} from '../layout/index.ts';
import { foldDiagram } from '../pictures/foldDiagram.ts';
import { panelRows } from '../pictures/panelRows.ts';
import { documentOf, sheetOf, titleOf, type PaperInput } from './paperSet.ts';

/** Sizes tried, from the roomiest: the card is one page. Below the last it would not be read at arm's length. */
const scales = [1, 0.93, 0.86, 0.8, 0.74, 0.68];

/** The card: one page to cut and chalk from, with the reason of every number on it. */
export function card(input: PaperInput): PaperDocument {
  const { speaker, fonts } = input;
  const { papers } = speaker.words;
  const of = sheetOf(input, papers.card);
  // The table of rows may be left off where there is no room: the ribbon list has it too.
  for (const withRows of [true, false])
    for (const scale of scales) {
      const pages = flow(blocksOf(input, withRows, scale), of, fonts, scaled(scale));
      if (pages.length === 1) return documentOf(input, papers.card, pages);
    }
  const smallest = scales.at(-1) ?? 1;
  return documentOf(input, papers.card, flow(blocksOf(input, false, smallest), of, fonts, scaled(smallest)));
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

function blocksOf(input: PaperInput, withRows: boolean, scale: number): Block[] {
  const { plan, speaker } = input;
  const { papers, cuts } = speaker.words;
  const { skirt, cloth } = plan;
  const cut = cuts[plan.request.cut.kind];
  const length = `${speaker.name(skirt.finishedLength)} ${speaker.value(skirt.finishedLength)}`;
  return [
    heading(1, titleOf(input)),
    paragraph(`${cut.charAt(0).toUpperCase()}${cut.slice(1)} · ${length}`, { quiet: true }),
    sideBySide(
      {
        share: 1,
        blocks: [
          heading(3, cloth.chosen.headToTail ? papers.markHeadingWhole : papers.markHeading),
          picture(foldDiagram(plan, speaker), { maxHeight: mm(TALLEST * scale) }),
          paragraph(markCaption(input), {
            size: 'small',
            quiet: true,
          }),
        ],
      },
      {
        share: 1,
        blocks: [
          heading(3, papers.rowsHeading),
          picture(panelRows(plan, speaker), { maxHeight: mm(TALLEST * 0.75 * scale) }),
          paragraph(papers.rowsCaption, { size: 'small', quiet: true }),
          ...(withRows
            ? rowsTable(input)
            : [paragraph(papers.rowsElsewhere, { size: 'small', quiet: true })]),
        ],
      },
    ),
    ...curveTable(input),
    heading(3, papers.numbersHeading),
    numbersTable(input),
    ...noticesBlock(input),
  ];
}

function markCaption({ plan, speaker }: PaperInput): string {
  const { papers } = speaker.words;
  if (plan.skirt.marking === 'straight widths') return papers.markCaptionWidths;
  return plan.cloth.chosen.headToTail ? papers.markCaptionWhole : papers.markCaption;
}

/** Number, value, and how it is got: each figure says its own. */
function numbersTable({ plan, speaker }: PaperInput): Block {
  const { skirt, cloth } = plan;
  const { papers } = speaker.words;
  const figures: (Figure | null)[] = [
    skirt.marks.waistQuarter,
    skirt.marks.hemQuarter === skirt.marks.waistQuarter ? null : skirt.marks.hemQuarter,
    skirt.marks.cutLength,
    skirt.marks.bottom === skirt.marks.cutLength ? null : skirt.marks.bottom,
    skirt.opening,
    skirt.hemRound,
    plan.stride.everyday,
    skirt.waist.topAllowance,
    skirt.waist.elastic?.cut ?? null,
    cloth.chosen.clothBefore,
    skirt.hang.shape === 'straight' && skirt.hang.sideAngle.value > 0 ? skirt.hang.sideAngle : null,
  ];
  return table(
    [column(papers.what, 1.15), column(papers.value, 0.62), column(papers.howGot, 3)],
    figures
      .filter((each) => each !== null)
      .map((each) => [capital(speaker.name(each)), [bold(speaker.value(each))], speaker.working(each) ?? '']),
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
        [bold(speaker.value(row.fromRawEdge))],
        speaker.value(row.fromHem),
        stripsText(row, speaker),
      ]),
    ),
  ];
}

/** `2 × 30⅝ in`: all strips of a row are cut alike. */
export function stripsText(row: Row, speaker: Speaker): string {
  const [first] = row.strips;
  if (!first) return '';
  return speaker.text(speaker.words.papers.stripsEach, { count: row.strips.length, length: first.length });
}

/** Dots of the curves of a level hem. */
function curveTable({ plan, speaker }: PaperInput): Block[] {
  const { hang } = plan.skirt;
  if (hang.shape !== 'curved') return [];
  const { papers } = speaker.words;
  const { waist, marks, finishedLength } = plan.skirt;
  const casing = waist.topAllowance;
  const beyond = speaker.length(mm(marks.cutLength.value - finishedLength.value - casing.value));
  const most = Math.max(hang.hemOrdinates.length, hang.waistOrdinates.length);
  const lines = (across: string, up: string, dots: readonly Ordinate[]) => [
    [
      across,
      ...padded(
        dots.map((dot) => speaker.length(dot.across)),
        most,
      ),
    ],
    [
      [bold(up)],
      ...padded(
        dots.map((dot) => speaker.value(dot.up)),
        most,
      ),
    ],
  ];
  return [
    together(
      heading(3, papers.curveHeading),
      paragraph(speaker.text(papers.curveCaption, { casing, beyond }), { size: 'small', quiet: true }),
      table(
        [column('', 2), ...Array.from({ length: most }, () => column('', 1, 'middle'))],
        [
          ...lines(papers.waistAcross, papers.waistCurve, hang.waistOrdinates),
          ...lines(papers.hemAcross, papers.hemCurve, hang.hemOrdinates),
        ],
      ),
    ),
  ];
}

const padded = (cells: readonly string[], length: number): string[] => [
  ...cells,
  ...Array.from({ length: Math.max(0, length - cells.length) }, () => ''),
];

function noticesBlock({ plan, speaker }: PaperInput): Block[] {
  if (plan.notices.length === 0) return [];
  const { papers, levels } = speaker.words;
  return [
    heading(3, papers.noticesHeading),
    list(
      plan.notices.map(({ notice }) => [
        bold(`${speaker.text(papers.lead, { what: levels[notice.level] })} `),
        plain(speaker.notice(notice)),
      ]),
      'dot',
    ),
  ];
}
