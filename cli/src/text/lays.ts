import {
  besideLays,
  buyLength,
  classTitle,
  clothName,
  clothTitle,
  laidFromShelf,
  layKinds,
  leftTexts,
  lengthTitle,
  meetsText,
  patternTexts,
  savedNotes,
  savedText,
  shelfTexts,
  shelfTitle,
  toldBeside,
  unusedTexts,
  usedLength,
  wayNotices,
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
    ...[
      ...lengthLines(cloth, speaker),
      ...(chosen.fits ? chosen.tables.flatMap((table) => patternTexts(table, chosen, speaker)) : []),
      ...meetsText(cloth, speaker),
      ...unusedTexts(cloth, speaker),
      ...savedNotes(cloth, speaker),
    ].flatMap((line) => indented(line, width)),
  ];
}

/** How many outlines are chalked on each length. */
const lengthLines = ({ chosen }: PlannedCloth, speaker: Speaker): string[] =>
  (chosen.fits ? chosen.tables : []).map((table) =>
    [
      speaker.text(speaker.words.papers.lead, { what: lengthTitle(table, chosen, speaker) }),
      speaker.text(speaker.words.workshop.outlines, { pieces: table.pieces.length }),
    ].join(' '),
  );

/** What there is to know of a way: of one that does not fit, why. */
function remarksOf(way: FoundCloth, isChosen: boolean, speaker: Speaker): string {
  const notices = wayNotices(way, speaker);
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
    ...laidFromShelf(plan, shelf).flatMap((some) => [
      '',
      style.heading(shelfTitle(some, speaker)),
      ...[...lengthLines(some, speaker), ...unusedTexts(some, speaker)].flatMap((line) =>
        indented(line, width),
      ),
    ]),
  ];
}

/** What of the lays should be known; the skirts' own notices are told by `check`. */
function noticeSection({ plan, shelf, speaker, style, width }: LayTextInput): string[] {
  const notices = besideLays(toldBeside(plan, shelf));
  if (notices.length === 0) return [];
  const lines = classNoticeLines({ notices }, speaker, style, width);
  return ['', style.heading(speaker.words.papers.noticesHeading), ...lines];
}

const indented = (line: string, width: number): string[] =>
  wrapText(line, width - 2).map((each) => `  ${each}`);
