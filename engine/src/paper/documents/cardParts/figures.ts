import { laidOf } from '../../../cloth/index.ts';
import type { Figure } from '../../../figure/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { clothCalled } from '../../pictures/clothInks.ts';
import { isCharted } from '../../pictures/pieces/charted.ts';

/** A number of the card, and what it is called there. */
export interface CardFigure {
  readonly name: string;
  readonly figure: Figure;
}

/** The figures of a card, in its order: those that mean something for the way this skirt is marked and made. */
export function cardFigures(
  plan: SkirtPlan,
  speaker: Speaker,
  tells: { readonly cloth: boolean } = { cloth: true },
): CardFigure[] {
  const { skirt, lining } = plan;
  const { papers } = speaker.words;
  const plain = (figures: readonly (Figure | null | undefined)[]): CardFigure[] =>
    figures.flatMap((figure) => (figure ? [{ name: speaker.name(figure), figure }] : []));
  const liningCloth = tells.cloth ? lining?.chosen.clothBefore : undefined;
  return [
    ...plain(markFigures(plan)),
    ...tierFigures(plan, speaker),
    ...roundFigures(plan, speaker),
    ...plain([plan.stride.everyday, ...waistFigures(plan), ...extraFigures(plan)]),
    ...(tells.cloth ? clothFigures(plan, speaker) : []),
    ...(liningCloth
      ? [{ name: `${papers.clothOf.lining} · ${speaker.name(liningCloth)}`, figure: liningCloth }]
      : []),
    ...growthFigures(plan, speaker),
    ...plain([
      skirt.marking === 'at the fold' && skirt.hang.shape === 'straight' && skirt.hang.sideAngle.value > 0
        ? skirt.hang.sideAngle
        : null,
    ]),
  ];
}

/** What each cloth takes; of several each says which. */
const clothFigures = (plan: SkirtPlan, speaker: Speaker): CardFigure[] =>
  plan.cloths.map((each) => {
    const figure = laidOf(plan, each).chosen.clothBefore;
    const name = speaker.name(figure);
    return { name: plan.cloths.length > 1 ? `${clothCalled(each, speaker)} · ${name}` : name, figure };
  });

/** Round the top and the hem; where both have one name, each says where. */
function roundFigures({ skirt: { opening, hemRound } }: SkirtPlan, speaker: Speaker): CardFigure[] {
  const { nameAtWaist, nameAtHem } = speaker.words.papers;
  const [top, hem] = [speaker.name(opening), speaker.name(hemRound)];
  const called = (pattern: string, name: string): string =>
    top === hem ? speaker.text(pattern, { name }) : name;
  return [
    { name: called(nameAtWaist, top), figure: opening },
    { name: called(nameAtHem, hem), figure: hemRound },
  ];
}

/** Of a child that grows: how far the hem will have risen, and when the skirt is too short or is to be let down. */
function growthFigures({ body: { growth }, skirt: { extras } }: SkirtPlan, speaker: Speaker): CardFigure[] {
  if (!growth) return [];
  const { hemRise, short } = growth;
  const { shortAbout, letDownAbout } = speaker.words.papers;
  // The forecast is of the skirt as it is sewn: with something to let down, that is the day to do it.
  const about = extras.tucks ? letDownAbout : shortAbout;
  return [
    { name: speaker.name(hemRise), figure: hemRise },
    ...(short ? [{ name: speaker.text(about, { date: short.on }), figure: short.months }] : []),
  ];
}

/** How wide each tier is; the lowest is the hem round. */
const tierFigures = ({ skirt: { rounds } }: SkirtPlan, speaker: Speaker): CardFigure[] =>
  rounds.slice(0, -1).map(({ bottom }, i) => ({
    name: `${speaker.text(speaker.words.papers.tierNumber, { number: i + 1 })} · ${speaker.name(bottom)}`,
    figure: bottom,
  }));

/** What is chalked at the fold; the radii of what is swung. Pieces have theirs on their chart. */
function markFigures({ skirt }: SkirtPlan): (Figure | null | undefined)[] {
  const { marks, marking } = skirt;
  if (marking === 'swung') return [marks.waistQuarter.inputs['radius'], marks.hemQuarter.inputs['radius']];
  if (isCharted({ skirt })) return [];
  return [
    marks.waistQuarter,
    marks.hemQuarter === marks.waistQuarter ? null : marks.hemQuarter,
    marks.cutLength,
    marks.bottom === marks.cutLength ? null : marks.bottom,
  ];
}

function waistFigures({ skirt: { waist } }: SkirtPlan): (Figure | null | undefined)[] {
  const { elastic, cord, closure, takenUp } = waist;
  return [
    waist.topAllowance,
    waist.above.value > 0 ? waist.above : null,
    elastic?.cut,
    cord?.cut,
    cord?.freeEnd,
    closure?.depth,
    closure && closure.overlap.value > 0 ? closure.overlap : null,
    takenUp && takenUp.by !== 'nothing' ? takenUp.difference : null,
    takenUp?.dartWidth,
    takenUp?.dartLength,
  ];
}

function extraFigures({ skirt: { extras, overlap } }: SkirtPlan): (Figure | null | undefined)[] {
  const { pockets, slits, lining, tucks } = extras;
  return [
    overlap?.width,
    pockets?.opening,
    pockets?.below,
    slits?.height,
    lining?.length,
    tucks?.letsDown,
    ...(tucks && tucks.count.value > 0 ? [tucks.count, tucks.depth, tucks.below] : []),
  ];
}
