import type { Lay } from '../../cloth/index.ts';
import { mm, type Mm } from '../../units/index.ts';
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
  sideBySide,
  table,
  together,
  type Block,
} from '../layout/index.ts';
import { layPicture } from '../pictures/layPicture.ts';
import { workingsOf } from './clothTexts.ts';
import { documentOf, sheetOf, type PaperInput } from './paperSet.ts';

/** The cutting layout: the way that is taken, drawn large, and every other way beside it with what it takes. */
export function layPaper(input: PaperInput): PaperDocument {
  const { plan, speaker, fonts } = input;
  const { papers } = speaker.words;
  const { chosen, lays } = plan.cloth;
  const of = sheetOf(input, papers.lay);
  const width = mm(of.size.width - 2 * of.margin);
  const blocks: Block[] = [
    heading(1, papers.lay),
    heading(2, speaker.text(chosen.fits ? papers.layHeading : papers.layHeadingNone, { lay: chosen.kind })),
    ...chosenBlocks(input, width),
    ...haveBlock(input),
    heading(2, papers.otherLays),
    table(
      [
        column('', 1.1),
        column('', 1.6),
        column(papers.clothAfterWash, 1),
        column(papers.clothBeforeWash, 1),
        column(papers.toBuy, 0.8),
        column(papers.leftOver, 1.3),
      ],
      lays.map((lay) => [
        layPicture(lay, speaker, 'small', { width: mm(30), height: mm(19) }, { skirt: plan.skirt }),
        [bold(speaker.words.lays[lay.kind]), plain(`\n${remarks(lay, lay === chosen, speaker)}`)],
        speaker.value(lay.clothAfter),
        speaker.value(lay.clothBefore),
        [bold(speaker.value(lay.toBuy))],
        speaker.text(papers.leftOverSize, lay.left),
      ]),
    ),
    ...refusals(lays, speaker),
    ...otherCloths(input).flatMap((each) => otherBlocks(each, input, width)),
  ];
  return documentOf(input, papers.lay, flow(blocks, of, fonts));
}

interface OtherCloth {
  readonly name: string;
  readonly lay: Lay;
}

/** The lining's cloth, and each that single pieces are cut from. */
function otherCloths({ plan, speaker }: PaperInput): OtherCloth[] {
  const { items, workshop } = speaker.words;
  return [
    ...(plan.lining ? [{ name: items.lining, lay: plan.lining.chosen }] : []),
    ...plan.contrast.map(({ options, cloth }) => ({
      name: options.name || workshop.clothOther,
      lay: cloth.chosen,
    })),
  ];
}

/** An other cloth in the way that is taken, with what it takes. */
function otherBlocks({ name, lay }: OtherCloth, { plan, speaker }: PaperInput, width: Mm): Block[] {
  const { papers } = speaker.words;
  const told = lay.fits ? papers.layHeading : papers.layHeadingNone;
  return [
    together(
      heading(2, name),
      paragraph([bold(speaker.text(told, { lay: lay.kind }))]),
      picture(layPicture(lay, speaker, 'large', { width, height: mm(90) }, { skirt: plan.skirt })),
    ),
    ...workingsOf(lay, speaker).map((line) => paragraph(line)),
    ...refusals([lay], speaker),
  ];
}

/** Wide lays are drawn across the page; narrow ones stand beside what there is to say of them. */
function chosenBlocks({ plan, speaker }: PaperInput, width: Mm): Block[] {
  const { chosen } = plan.cloth;
  const swung = plan.skirt.marking === 'swung';
  const room = { width, height: mm(chosen.more.length > 0 ? 150 : 104) };
  const drawn = layPicture(chosen, speaker, 'large', room, { skirt: plan.skirt, swung });
  const words: Block[] = [
    ...(swung ? [paragraph(speaker.words.papers.swingCaption, { size: 'small', quiet: true })] : []),
    ...foldBlocks({ plan, speaker }),
    ...workingsOf(chosen, speaker).map((line) => paragraph(line)),
    ...cheaper(plan.cloth, speaker),
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

/** The fold that is marked by hand is taken though another way may take less: which, and how much, is said. */
function cheaper({ chosen, lays }: PaperInput['plan']['cloth'], speaker: Speaker): Block[] {
  const least = lays
    .filter(({ fits }) => fits)
    .reduce((best, lay) => (lay.toBuy.value < best.toBuy.value ? lay : best), chosen);
  if (least === chosen || !chosen.fits) return [];
  const words = { taken: chosen.kind, lay: least.kind, buy: least.toBuy };
  return [paragraph(speaker.text(speaker.words.papers.layCheaper, words))];
}

function remarks(lay: Lay, isChosen: boolean, speaker: Speaker): string {
  const { papers } = speaker.words;
  return [
    isChosen && lay.fits ? papers.layChosen : '',
    lay.fits ? '' : papers.layDoesNotFit,
    lay.printOnItsSide ? papers.printSide : papers.printUpright,
  ]
    .filter((each) => each !== '')
    .join(', ');
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

/** Answer to "what can I make from this?". */
export function haveBlock({ fromCloth, speaker }: PaperInput): Block[] {
  if (!fromCloth) return [];
  return [
    heading(3, speaker.text(speaker.words.papers.haveHeading, { have: speaker.length(fromCloth.have) })),
    list(haveLines(fromCloth, speaker), 'dot'),
  ];
}

export function haveLines(answer: NonNullable<PaperInput['fromCloth']>, speaker: Speaker): string[] {
  const { papers } = speaker.words;
  const { longest, fullest, mostRows, count } = answer;
  return [
    longest ? speaker.text(papers.haveLongest, { length: longest }) : papers.haveNothing,
    ...(fullest
      ? [speaker.text(papers.haveFullest, { fullness: fullest.fullness, hem: fullest.hemQuarter })]
      : []),
    ...(mostRows ? [speaker.text(papers.haveRows, { rows: mostRows })] : []),
    speaker.text(papers.haveMany, { count }),
  ];
}
