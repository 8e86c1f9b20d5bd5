import {
  pieceNames,
  type ClothPlan,
  type ContrastPlan,
  type Lay,
  type SkirtCloth,
} from '../../cloth/index.ts';
import type { FromCloth } from '../../plan/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { inks, type Ink, type PaperDocument } from '../drawing/index.ts';
import {
  bold,
  column,
  figure as picture,
  flow,
  heading,
  list,
  paragraph,
  plain,
  sideBySide,
  table,
  together,
  type Block,
} from '../layout/index.ts';
import { clothCalled, washOfCloth } from '../pictures/clothInks.ts';
import { layPicture } from '../pictures/layPicture.ts';
import { NOT_KNOWN, workingsOf } from './clothTexts.ts';
import { cheaperThan, layRemarks, wayLengths } from './wayTexts.ts';
import { haveLines, haveTitle, haveWorkings } from './haveTexts.ts';
import { documentOf, sheetOf, type PaperInput } from './paperSet.ts';

/**
 * The cutting layout: the way that is taken, drawn large, and every other way beside it with what it takes; of each cloth where
 * there are several.
 */
export function layPaper(input: PaperInput): PaperDocument {
  const { plan, speaker, fonts } = input;
  const { papers } = speaker.words;
  const { chosen } = plan.cloth;
  const of = sheetOf(input, papers.lay);
  const width = mm(of.size.width - 2 * of.margin);
  const taken = speaker.text(chosen.fits ? papers.layHeading : papers.layHeadingNone, { lay: chosen.kind });
  const blocks: Block[] = [
    heading(1, papers.lay),
    ...(plan.cloths.length > 1 ? ofCloth(plan.cloths[0], plan.cloth, input) : [heading(2, taken)]),
    ...chosenBlocks(input, width),
    ...haveBlocks(input),
    heading(2, papers.otherLays),
    ...waysBlocks(plan.cloth, input, inks.wash),
    ...plan.contrast.flatMap((each) => contrastBlocks(each, input, width)),
    ...liningBlocks(input, width),
  ];
  return documentOf(input, papers.lay, flow(blocks, of, fonts));
}

/** Which cloth it is, how it is laid and what is cut from it. */
const ofCloth = (cloth: SkirtCloth, { chosen }: ClothPlan, { plan, speaker }: PaperInput): Block[] => [
  heading(
    2,
    speaker.text(speaker.words.workshop.clothHeading, {
      cloth: clothCalled(cloth, speaker),
      lay: chosen.kind,
    }),
  ),
  paragraph(
    speaker.text(speaker.words.papers.clothPieces, {
      pieces: speaker.pieces(pieceNames(plan.skirt, cloth)),
    }),
  ),
];

/** Another cloth of the skirt. */
function contrastBlocks({ at, cloth }: ContrastPlan, input: PaperInput, width: Mm): Block[] {
  const { plan, speaker } = input;
  const { papers } = speaker.words;
  const found = plan.cloths.find(({ which }) => which === at);
  if (!found) return [];
  const { chosen } = cloth;
  const wash = washOfCloth(found);
  const swung = plan.skirt.marking === 'swung';
  const room = { width, height: mm(90) };
  return [
    ...ofCloth(found, cloth, input),
    ...(chosen.fits ? [] : [paragraph(papers.layHeadingNone)]),
    picture(layPicture({ lay: chosen, skirt: plan.skirt }, speaker, 'large', room, { wash, swung })),
    ...workingsOf(chosen, speaker).map((line) => paragraph(line)),
    ...waysBlocks(cloth, input, wash),
  ];
}

/** Every way to lay one cloth side by side; why a way does not fit, or what it asks. */
const waysBlocks = ({ lays, chosen }: ClothPlan, { plan, speaker }: PaperInput, wash: Ink): Block[] => {
  const { papers } = speaker.words;
  const room = { width: mm(30), height: mm(19) };
  return [
    table(
      [
        column('', 1.1),
        column('', 1.6),
        column(papers.clothAfterWash, 1),
        column(papers.clothBeforeWash, 1),
        column(papers.toBuy, 0.8),
        column(papers.leftOver, 1.3),
      ],
      lays.map((lay) => {
        const [after, before, buy] = wayLengths(lay, speaker);
        return [
          layPicture({ lay, skirt: plan.skirt }, speaker, 'small', room, { wash }),
          [bold(speaker.words.lays[lay.kind]), plain(`\n${layRemarks(lay, lay === chosen, speaker)}`)],
          after,
          before,
          [bold(buy)],
          lay.fits ? speaker.text(papers.leftOverSize, lay.left) : NOT_KNOWN,
        ];
      }),
    ),
    ...refusals(lays, speaker),
  ];
};

/** The lining's own cloth, as it takes least. */
function liningBlocks({ plan, speaker }: PaperInput, width: Mm): Block[] {
  if (!plan.lining) return [];
  const { chosen } = plan.lining;
  const { items, papers } = speaker.words;
  return [
    heading(2, items.lining),
    paragraph([bold(speaker.text(papers.layHeading, { lay: chosen.kind }))]),
    picture(layPicture({ lay: chosen, skirt: plan.skirt }, speaker, 'large', { width, height: mm(90) })),
    ...workingsOf(chosen, speaker).map((line) => paragraph(line)),
  ];
}

/** Wide lays are drawn across the page; narrow ones stand beside what there is to say of them. */
function chosenBlocks({ plan, speaker }: PaperInput, width: Mm): Block[] {
  const { chosen } = plan.cloth;
  const swung = plan.skirt.marking === 'swung';
  const room = { width, height: mm(chosen.more.length > 0 ? 150 : 104) };
  const drawn = layPicture({ lay: chosen, skirt: plan.skirt }, speaker, 'large', room, { swung });
  const cheaper = cheaperThan(plan);
  const words: Block[] = [
    ...(swung ? [paragraph(speaker.words.papers.swingCaption, { size: 'small', quiet: true })] : []),
    ...foldBlocks({ plan, speaker }),
    ...workingsOf(chosen, speaker).map((line) => paragraph(line)),
    ...(cheaper ? [paragraph(speaker.text(speaker.words.papers.layCheaper, cheaper))] : []),
  ];
  if (drawn.width > width * 0.6) return [picture(drawn), ...words];
  const share = drawn.width / width;
  return [sideBySide({ share, blocks: [picture(drawn)] }, { share: 1 - share, blocks: words })];
}

/** How the cloth is put on the table. */
export function foldBlocks({ plan, speaker }: Pick<PaperInput, 'plan' | 'speaker'>): Block[] {
  const fold = plan.sewing.steps.find(({ id }) => id === 'fold');
  return fold ? [list(fold.sentences.map(speaker.sentence), 'number')] : [];
}

/** Why a way does not fit, or what it asks: each said once. */
function refusals(lays: readonly Lay[], speaker: Speaker): Block[] {
  const items = lays.flatMap((lay) =>
    lay.notices.map((notice) => [
      bold(`${speaker.text(speaker.words.papers.lead, { what: speaker.words.lays[lay.kind] })} `),
      plain(speaker.notice(notice)),
    ]),
  );
  return items.length === 0 ? [] : [together(list(items, 'dot'))];
}

/** Of each length of cloth that was asked about: "what can I make from this?" Not of one that the skirt is cut from. */
export const haveBlocks = ({ fromCloth, laid, speaker }: PaperInput): Block[] =>
  fromCloth
    .filter((answer) => !isCutFrom(answer, laid))
    .flatMap((answer) => [
      heading(3, haveTitle(answer, speaker)),
      list(haveLines(answer, speaker), 'dot'),
      ...answer.notices.map((notice) => paragraph(speaker.notice(notice))),
      ...haveWorkings(answer, speaker).map((line) => paragraph(line, { size: 'small', quiet: true })),
    ]);

/** Whether a lay that was found lies on that length. */
const isCutFrom = ({ at, have }: FromCloth, laid: PaperInput['laid']): boolean =>
  at !== null &&
  (laid?.cloths ?? []).some(({ chosen: { tables } }) =>
    tables.some(({ from }) => from.name === at.name && from.length === have && from.width === at.width),
  );
