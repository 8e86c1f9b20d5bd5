import type { FoundTable } from '../../cloth/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import type { PlannedCloth } from '../../workshop/index.ts';
import type { Drawing } from '../drawing/index.ts';
import {
  bold,
  column,
  figure,
  heading,
  pageBreak,
  paragraph,
  plain,
  table,
  type Block,
} from '../layout/index.ts';
import { chalkedLay, chalkedSheet, type ChalkedLook } from '../pictures/chalk/chalkedLay.ts';
import {
  buyLength,
  clothTitle,
  lengthTitle,
  savedNotes,
  savedText,
  shelfTitle,
  uncutTexts,
  unusedTexts,
  usedLength,
  wayRemarks,
  wayWords,
  workingsOf,
} from './clothTexts.ts';
import { namesOnTable, piecesTable } from './laidPieces.ts';
import { meetsText, minded, patternTexts } from './patternTexts.ts';

/** Most and least of paper that the cloth's width takes in a drawing to chalk from. */
const DEEPEST = mm(120);
const SHALLOWEST = mm(64);

/**
 * A cloth: how it is put on the table, what it takes and why, the ways to lay it; then each of its lengths on a sheet of
 * its own, to lie beside the cloth while it is chalked.
 */
export function clothBlocks(
  cloth: PlannedCloth,
  speaker: Speaker,
  width: Mm,
  steps: readonly Block[] = [],
): Block[] {
  const { workshop } = speaker.words;
  const { chosen } = cloth;
  return [
    heading(2, clothTitle(cloth, speaker)),
    ...steps,
    ...[...(chosen.fits ? workingsOf(chosen, speaker) : []), ...meetsText(cloth, speaker)].map((line) =>
      paragraph(line),
    ),
    ...unusedTexts(cloth, speaker).map((line) => paragraph(line)),
    heading(3, workshop.waysHeading),
    ...savedNotes(cloth, speaker).map((line) => paragraph(line, { size: 'small', quiet: true })),
    waysTable(cloth, speaker),
    ...sheets(cloth, speaker, width),
  ];
}

/** Those skirts that what is at hand is enough for, where it is not for all: each length on a sheet of its own. */
export const shelfBlocks = (cloth: PlannedCloth, speaker: Speaker, width: Mm): Block[] => [
  ...sheets(cloth, speaker, width, [heading(2, shelfTitle(cloth, speaker))]),
  ...unusedTexts(cloth, speaker).map((line) => paragraph(line)),
];

const sheets = (cloth: PlannedCloth, speaker: Speaker, width: Mm, above: readonly Block[] = []): Block[] =>
  tablesIn(cloth).flatMap((each) => [
    pageBreak,
    ...above,
    heading(3, lengthTitle(each, cloth.chosen, speaker)),
    ...lengthBlocks(each, cloth, speaker, width),
  ]);

/** The lengths to chalk: none where something on them does not fit. */
const tablesIn = ({ chosen }: PlannedCloth): readonly FoundTable[] => (chosen.fits ? chosen.tables : []);

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
      usedLength(way, speaker),
      savedText(way, speaker),
      [bold(buyLength(way, speaker))],
    ]),
  );
}

/** One length of cloth, drawn to chalk from, and its pieces in a table. */
function lengthBlocks(each: FoundTable, cloth: PlannedCloth, speaker: Speaker, width: Mm): Block[] {
  const { workshop } = speaker.words;
  const nameOf = namesOnTable(cloth, speaker);
  const drawings = chalkedLay(each, {
    speaker,
    nameOf,
    fabric: minded(cloth.chosen),
    width,
    most: DEEPEST,
    least: SHALLOWEST,
  });
  const caption = `${speaker.text(workshop.chalkCaption, {
    left: speaker.words.tableEdges[each.left],
    top: speaker.words.tableEdges[each.top],
  })} ${workshop.washedCaption}`;
  return [
    ...drawings.map((drawn) => figure(drawn)),
    paragraph(caption, { size: 'small', quiet: true }),
    ...patternTexts(each, cloth.chosen, speaker).map((line) =>
      paragraph(line, { size: 'small', quiet: true }),
    ),
    ...uncutTexts(each, speaker).map((line) => paragraph(line)),
    piecesTable(each, cloth, speaker),
  ];
}

/** For a screen: how wide, the cloth in its own colour, whose pieces stand out. */
export type LengthLook = Partial<Pick<ChalkedLook, 'width' | 'least' | 'cloth' | 'wearer'>>;

/** Each length of the chosen lay as a drawing of its own, all its stretches in one. */
export const lengthPictures = (cloth: PlannedCloth, speaker: Speaker, look: LengthLook = {}): Drawing[] =>
  tablesIn(cloth).map((each) =>
    chalkedSheet(each, {
      speaker,
      nameOf: namesOnTable(cloth, speaker),
      fabric: minded(cloth.chosen),
      width: PICTURE_WIDTH,
      most: DEEPEST,
      least: SHALLOWEST,
      ...look,
    }),
  );

const PICTURE_WIDTH = mm(260);
