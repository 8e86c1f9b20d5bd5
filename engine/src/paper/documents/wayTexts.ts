import { patternKind, type Lay, type LayKind } from '../../cloth/index.ts';
import type { Figure } from '../../figure/index.ts';
import type { SkirtPlan } from '../../plan/index.ts';
import type { Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import { buyLength, NOT_KNOWN } from './clothTexts.ts';

/** A way that less would be bought for than for the one that is taken, and why that one is. */
export interface Cheaper {
  readonly why: 'folds' | 'other';
  readonly taken: LayKind;
  readonly lay: LayKind;
  readonly buy: Figure<Mm>;
  /** Whether it is cut from what is at hand. */
  readonly free: 'yes' | 'no';
  readonly [param: string]: string | Figure<Mm>;
}

/** Which way of a skirt's own cloth would be bought less of than what is taken; null where none is. */
export function cheaperThan({ cloth, skirt, request }: SkirtPlan): Cheaper | null {
  const { lays, chosen, fabric, notices } = cloth;
  // What a search found keeps what hands don't: beside it they only seem to take less.
  const isByHand = notices.some(({ code }) => code === 'cloth.laidByHand');
  if (!isByHand && (patternKind(fabric) !== null || fabric.between.value > 0)) return null;
  const least = lays
    .filter(({ fits }) => fits)
    .reduce((best, lay) => (lay.toBuy.value < best.toBuy.value ? lay : best), chosen);
  if (least === chosen || !chosen.fits) return null;
  const isAtFolds = chosen.kind === 'double fold' && skirt.marking === 'at the fold';
  return {
    why: isAtFolds && request.cloth.lay === 'auto' ? 'folds' : 'other',
    taken: chosen.kind,
    lay: least.kind,
    buy: least.toBuy,
    free: least.from ? 'yes' : 'no',
  };
}

/** What a way made by hand takes after the wash, before it, and what is bought; nothing of one that does not fit. */
export function wayLengths(lay: Lay, speaker: Speaker): [string, string, string] {
  if (!lay.fits) return [NOT_KNOWN, NOT_KNOWN, NOT_KNOWN];
  return [speaker.value(lay.clothAfter), speaker.value(lay.clothBefore), buyLength(lay, speaker)];
}

/** Whether a way made by hand is taken or can't be, and how a print would lie. */
export function layRemarks(lay: Lay, isChosen: boolean, speaker: Speaker): string {
  const { papers } = speaker.words;
  if (!lay.fits) return papers.layDoesNotFit;
  return [
    ...(isChosen ? [papers.layChosen] : []),
    ...fromTexts(lay, speaker),
    lay.printOnItsSide ? papers.printSide : papers.printUpright,
  ].join(', ');
}

/** The length at hand that a way made by hand is cut from; nothing where it is cut off the bolt. */
export const fromTexts = ({ from }: Pick<Lay, 'from'>, speaker: Speaker): string[] =>
  from
    ? [
        speaker.text(speaker.words.papers.layFrom, {
          named: from.name === '' ? 'no' : 'yes',
          name: from.name,
          length: speaker.length(from.length),
        }),
      ]
    : [];
