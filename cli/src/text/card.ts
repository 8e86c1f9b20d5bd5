import {
  buyText,
  cardFigures,
  cheaperThan,
  haveLines,
  haveTitle,
  haveWorkings,
  isCharted,
  layRemarks,
  panelTexts,
  partTexts,
  riseTexts,
  rowPlace,
  stripsText,
  subtitle,
  titleOf,
  wayLengths,
  type Figure,
  type FromCloth,
  type SkirtPlan,
  type Speaker,
} from '@ribbonwright/engine';
import { noticeLines } from './notices.ts';
import type { Style } from './style.ts';
import { textTable, wrapText } from './table.ts';

export interface CardInput {
  readonly plan: SkirtPlan;
  readonly speaker: Speaker;
  readonly fromCloth: readonly FromCloth[];
  readonly style: Style;
  readonly width: number;
}

/** The card for a terminal: marks, rows, cloth, shopping, time and notices, each number with its reason. */
export function cardText(input: CardInput): string {
  const { plan, speaker, style, width } = input;
  const { papers, command } = speaker.words;
  const { sewing } = plan;
  const section = (heading: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : ['', style.heading(heading), ...lines];
  return [
    style.heading(titleOf(input)),
    subtitle(input),
    ...(isCharted(plan) ? section(papers.piecesHeading, pieceLines(panelTexts(plan, speaker), width)) : []),
    ...section(papers.partsHeading, pieceLines(partTexts(plan, speaker), width)),
    ...section(papers.risesHeading, riseLines(input)),
    ...section(isCharted(plan) ? papers.numbersHeading : papers.markHeading, markLines(input)),
    ...section(papers.rowsHeading, rowLines(input)),
    ...section(papers.otherLays, layLines(input)),
    ...haveSections(input, section),
    ...section(papers.shoppingList, shoppingLines(input)),
    ...section(command.timeHeading, [
      `  ${speaker.text(papers.timeTotal, { hands: sewing.hands, wait: sewing.wait })}`,
    ]),
    ...section(papers.noticesHeading, noticeLines(plan, speaker, style, width)),
    '',
  ].join('\n');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Each piece with how many are cut, and what is chalked of it. */
const pieceLines = (pieces: ReturnType<typeof panelTexts>, width: number): string[] =>
  textTable(
    { rows: pieces.map(({ title, measures }) => [capital(title), measures.join(' · ')]), right: [] },
    width,
  );

function riseLines({ plan, speaker }: CardInput): string[] {
  const rises = riseTexts(plan, speaker);
  return rises.length === 0
    ? []
    : [`  ${speaker.words.papers.risesCaption}`, ...rises.map((line) => `  ${line}`)];
}

function markLines({ plan, speaker, width }: CardInput): string[] {
  const { skirt, cloth, lining } = plan;
  const { marks } = skirt;
  const { papers } = speaker.words;
  // What each way of laying takes has a table of its own.
  const elsewhere: readonly (Figure | undefined)[] = [cloth.chosen.clothBefore, lining?.chosen.clothBefore];
  const figures: [string, Figure][] = [
    ...cardFigures(plan, speaker)
      .filter(({ figure }) => !elsewhere.includes(figure))
      .map(({ name, figure }): [string, Figure] => [name, figure]),
    ...(skirt.marking === 'at the fold' && skirt.hang.shape === 'straight'
      ? ([
          [papers.topEdge, marks.casingEnd],
          [papers.rawEdge, marks.hemEnd],
        ] as [string, Figure][])
      : []),
  ];
  const rows = figures.map(([name, figure]) => [
    capital(name),
    speaker.value(figure),
    speaker.working(figure) ?? '',
  ]);
  return textTable({ rows, right: [1] }, width);
}

function rowLines({ plan, speaker, width }: CardInput): string[] {
  const { papers } = speaker.words;
  const { rows } = plan.ribbons;
  if (rows.length === 0) return [];
  return textTable(
    {
      head: [papers.row, papers.ribbon, papers.fromRawEdge, papers.fromHem, papers.cutStrips],
      rows: rows.map((row) => [
        String(row.number),
        `${speaker.colour(row.colour)} ${speaker.value(row.width)}`,
        rowPlace(row, plan.skirt, speaker),
        speaker.value(row.fromHem),
        stripsText(row, speaker),
      ]),
      right: [2, 3],
    },
    width,
  );
}

function layLines({ plan, speaker, width }: CardInput): string[] {
  const { papers, lays } = speaker.words;
  const { chosen } = plan.cloth;
  const cheaper = cheaperThan(plan);
  const ways = textTable(
    {
      head: ['', papers.clothAfterWash, papers.clothBeforeWash, papers.toBuy, ''],
      rows: plan.cloth.lays.map((lay) => [
        lays[lay.kind],
        ...wayLengths(lay, speaker),
        layRemarks(lay, lay === chosen, speaker),
      ]),
      right: [1, 2, 3],
    },
    width,
  );
  const why = cheaper ? wrapText(speaker.text(papers.layCheaper, cheaper), width - 2) : [];
  return [...ways, ...why.map((line) => `  ${line}`)];
}

function haveSections(
  { fromCloth, speaker, style, width }: CardInput,
  section: (heading: string, lines: readonly string[]) => string[],
): string[] {
  return fromCloth.flatMap((answer) => {
    const lines = [...haveLines(answer, speaker), ...haveWorkings(answer, speaker)];
    const notices = answer.notices.map((notice) => ({ stage: 'cloth' as const, notice, of: null }));
    return section(haveTitle(answer, speaker), [
      ...lines.flatMap((line) => wrapText(line, width - 2).map((each) => `  ${each}`)),
      ...noticeLines({ notices }, speaker, style, width),
    ]);
  });
}

function shoppingLines({ plan, speaker, width }: CardInput): string[] {
  const { items } = speaker.words;
  return textTable(
    {
      rows: plan.supplies.items.map((item) => [
        items[item.what],
        [
          item.name ?? '',
          item.colour ? speaker.colour(item.colour) : '',
          item.width ? speaker.value(item.width) : '',
        ]
          .filter((each) => each !== '')
          .join(' '),
        buyText(item, speaker),
        item.price ? speaker.money(item.price) : '',
      ]),
      right: [2],
    },
    width,
  );
}
