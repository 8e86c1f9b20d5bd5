import {
  buyLength,
  classTitle,
  clothName,
  clothTitle,
  layKinds,
  leftTexts,
  lengthTitle,
  meetsText,
  patternTexts,
  savedNotes,
  savedText,
  shelfTexts,
  unusedTexts,
  usedLength,
  wayRemarks,
  type ClassPlan,
  type FoundCloth,
  type HowMany,
  type PlannedCloth,
  type Speaker,
} from '@ribbonwright/engine';
import { classNoticeLines } from './notices.ts';
import type { Style } from './style.ts';
import { textTable, wrapText } from './table.ts';

interface LayTextInput {
  readonly plan: ClassPlan;
  readonly speaker: Speaker;
  readonly shelf: readonly HowMany[];
  readonly style: Style;
  readonly width: number;
}

/** The ways to lay each cloth side by side, what the one that is taken asks of her hands, and what there is to buy. */
export function layText(input: LayTextInput): string {
  const { plan, speaker, style, width } = input;
  const { papers, workshop, lays } = speaker.words;
  return [
    style.heading(classTitle(input)),
    ...plan.cloths.flatMap((cloth) => ['', ...clothLines(cloth, input)]),
    '',
    style.heading(workshop.asksHeading),
    ...textTable({ rows: layKinds.map((kind) => [lays[kind], workshop.asks[kind]]) }, width),
    '',
    style.heading(workshop.clothsHeading),
    ...textTable(
      {
        head: [workshop.cloth, workshop.used, workshop.saved, papers.toBuy, workshop.leftOverHeading],
        rows: plan.cloths.map((cloth) => [
          clothName(cloth, speaker),
          usedLength(cloth.chosen, speaker),
          savedText(cloth.chosen, speaker),
          buyLength(cloth.chosen, speaker),
          speaker.apart(leftTexts(cloth.chosen, speaker)),
        ]),
        right: [1, 2, 3],
      },
      width,
    ),
    ...shelfSection(input),
    ...noticeSection(input),
    '',
  ].join('\n');
}

function clothLines(cloth: PlannedCloth, { plan, speaker, style, width }: LayTextInput): string[] {
  const { papers, workshop, lays } = speaker.words;
  const { ways, chosen } = cloth;
  const whose = cloth.shares.map(({ skirt }) => skirt.label).filter((label) => label !== '');
  const rows = ways.map((way) => [
    lays[way.kind],
    usedLength(way, speaker),
    savedText(way, speaker),
    buyLength(way, speaker),
    remarksOf(way, way === chosen, speaker),
  ]);
  return [
    style.heading(clothTitle(cloth, speaker)),
    ...(plan.skirts.length > 1 ? wrapText(`  ${whose.join(', ')}`, width) : []),
    ...textTable(
      { head: ['', workshop.used, workshop.saved, papers.toBuy, ''], rows, right: [1, 2, 3] },
      width,
    ),
    ...(chosen.fits ? chosen.tables : []).flatMap((table) =>
      indented(
        `${speaker.text(papers.lead, { what: lengthTitle(table, speaker) })} ${speaker.text(workshop.outlines, { pieces: table.pieces.length })}`,
        width,
      ),
    ),
    ...[
      ...(chosen.fits ? chosen.tables.flatMap((table) => patternTexts(table, chosen, speaker)) : []),
      ...meetsText(cloth, speaker),
      ...unusedTexts(cloth, speaker),
      ...savedNotes(cloth, speaker),
    ].flatMap((line) => indented(line, width)),
  ];
}

/** What there is to know of a way: of one that does not fit, why. */
function remarksOf(way: FoundCloth, isChosen: boolean, speaker: Speaker): string {
  const notices = way.notices.filter(({ level }) => way.fits || level === 'problem').map(speaker.notice);
  const remarks = wayRemarks(way, isChosen, speaker);
  return notices.length === 0 ? remarks : [`${remarks}.`, ...notices].join(' ');
}

function shelfSection({ shelf, plan, speaker, style, width }: LayTextInput): string[] {
  const said = shelfTexts(shelf, plan, speaker);
  if (said.length === 0) return [];
  return [
    '',
    style.heading(speaker.words.workshop.shelfHeading),
    ...said.flatMap((line) => indented(line, width)),
  ];
}

/** What of the lays should be known; the skirts' own notices are told by `check`. */
function noticeSection({ plan, speaker, style, width }: LayTextInput): string[] {
  const notices = plan.notices.filter(({ label, notice }) => label === null || notice.level === 'problem');
  if (notices.length === 0) return [];
  const lines = classNoticeLines({ notices }, speaker, style, width);
  return ['', style.heading(speaker.words.papers.noticesHeading), ...lines];
}

const indented = (line: string, width: number): string[] =>
  wrapText(line, width - 2).map((each) => `  ${each}`);
