import { pieceNames } from '../../../cloth/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { clothCalled } from '../../pictures/clothInks.ts';
import { openingTurn } from './places.ts';
import type { WornSide } from './stance.ts';
import { nearestTo, seamTurns } from './view.ts';

export const titleOf = ({ words: { papers } }: Speaker, side: WornSide): string =>
  ({ front: papers.wornFront, back: papers.wornBack, side: papers.wornSide })[side];

/** The picture for those who can't see it: who wears it and how, its cut, waist and extras, rows from the hem up, its hem. */
export function inWords(plan: SkirtPlan, speaker: Speaker): string {
  const { papers } = speaker.words;
  const { rows } = plan.ribbons;
  const list = rows.map(({ colour }) => speaker.colour(colour)).join(', ');
  const parts = [
    speaker.text(papers.altWorn, {
      cloth: speaker.colour(plan.request.cloth.colour),
      length: speaker.value(plan.skirt.finishedLength),
    }),
    ...othersInWords(plan, speaker),
    ...wearerInWords(plan, speaker),
    cutInWords(plan, speaker),
    ...waistInWords(plan, speaker),
    ...extrasInWords(plan, speaker),
    rows.length > 0 ? speaker.text(papers.altWornRows, { rows: rows.length, list }) : papers.altWornPlain,
  ];
  const above = plan.body.hemHeight;
  if (above) parts.push(speaker.text(papers.altWornHem, { above: speaker.value(above) }));
  return parts.join(' ');
}

/** What is not of the skirt's own cloth. */
const othersInWords = ({ cloths, skirt }: SkirtPlan, speaker: Speaker): string[] =>
  cloths.slice(1).map((cloth) =>
    speaker.text(speaker.words.papers.altWornCloths, {
      called: clothCalled(cloth, speaker),
      pieces: speaker.pieces(pieceNames(skirt, cloth)),
    }),
  );

function wearerInWords({ body }: SkirtPlan, { words }: Speaker): string[] {
  const { altWornSeen: seen } = words.papers;
  return body.wears === 'seated' ? [seen.seated] : body.expecting ? [seen.expecting] : [];
}

function cutInWords({ skirt }: SkirtPlan, speaker: Speaker): string {
  const { altWornSeen: seen } = speaker.words.papers;
  const { rounds, overlap } = skirt;
  if (overlap) return speaker.text(seen.wrap, { closes: overlap.closes });
  return rounds.length > 1
    ? speaker.text(seen.tiers, { tiers: rounds.length })
    : speaker.text(seen.seams, { seams: seamTurns(skirt, rounds[0]).length });
}

const BEHIND = 1 / 16;

function waistInWords(plan: SkirtPlan, speaker: Speaker): string[] {
  const { altWornSeen: seen } = speaker.words.papers;
  const { build, above, elastic, cord, closure, takenUp } = plan.skirt.waist;
  const behind = closure && nearestTo([openingTurn(plan)], 0.5, BEHIND) !== null;
  return [
    speaker.text(seen.waist, { build, above: speaker.value(above), pulls: elastic?.where ?? 'none' }),
    ...(cord ? [seen.cord] : []),
    ...(closure ? [speaker.text(seen.closure, { kind: closure.kind, place: behind ? 'back' : 'left' })] : []),
    ...(takenUp && takenUp.darts > 0 ? [speaker.text(seen.darts, { darts: takenUp.darts })] : []),
  ];
}

function extrasInWords({ skirt }: SkirtPlan, speaker: Speaker): string[] {
  const { altWornSeen: seen } = speaker.words.papers;
  const { pockets, slits, tucks } = skirt.extras;
  const folded = tucks?.count.value ?? 0;
  return [
    ...(pockets ? [speaker.text(seen.pockets, { count: pockets.sides.length })] : []),
    ...(slits ? [speaker.text(seen.slits, { where: slits.where, height: speaker.value(slits.height) })] : []),
    ...(folded > 0 ? [speaker.text(seen.tucks, { count: folded })] : []),
  ];
}
